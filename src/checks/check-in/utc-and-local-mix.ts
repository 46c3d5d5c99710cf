import { timeText } from '../../consequences/starts.ts';
import { commonPractice, rule } from '../rule.ts';

/** Half in UTC and half by the clock on the wall: somebody comes an hour early twice a year. */
export const checkInUtcAndLocalMix = rule({
  id: 'check-in/utc-and-local-mix',
  severity: 'note',
  basis: 'practice',
  looksFor: 'Check-ins of which some are given in UTC and others in local time.',
  why: 'On a card the two look nearly the same. When the clocks change, those in UTC move against the others.',
  mend: 'Give all in local time, or all in UTC.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  evening: { name: Evening watch, listen: true, channel: 3, at: "23:30Z", lasts: 5 min } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  evening: { name: Evening watch, listen: true, channel: 3, at: "18:30", lasts: 5 min }`,
  *check({ plan }) {
    if (plan.timezone === 'UTC') return;
    const all = [...plan.checkIns.values()];
    const inUtc = all.filter(({ at }) => at.utc);
    const local = all.filter(({ at }) => !at.utc);
    const [odd] = inUtc.length <= local.length ? inUtc : local;
    if (!odd || inUtc.length === 0 || local.length === 0) return;
    yield {
      at: ['check-ins', odd.id, 'at'],
      message: `${odd.name} begins at ${timeText(odd.at)}, in ${odd.at.utc ? 'UTC' : 'local time'}; ${odd.at.utc ? local.length : inUtc.length} of ${all.length} check-ins are in ${odd.at.utc ? 'local time' : 'UTC'}.`,
    };
  },
});
