import { formatDuration } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** A watch that lasts longer than it is apart never ends. */
export const checkInLongerThanGap = rule({
  id: 'check-in/longer-than-gap',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A check-in that lasts longer than the time from one start to the next.',
  why: 'The next begins before this one is over. One of the two times is a slip, often of its unit.',
  mend: 'Correct `lasts` or `repeats`.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:00", until: "19:00", repeats: 1 h, lasts: 90 min } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:00", until: "19:00", repeats: 1 h, lasts: 5 min }`,
  *check({ plan }) {
    for (const { id, name, lastsMin, repeatsMin } of plan.checkIns.values()) {
      if (repeatsMin !== undefined && lastsMin > repeatsMin)
        yield {
          at: ['check-ins', id, 'lasts'],
          message: `${name} lasts ${formatDuration(lastsMin * 60)}, and begins again after ${formatDuration(repeatsMin * 60)}.`,
        };
    }
  },
});
