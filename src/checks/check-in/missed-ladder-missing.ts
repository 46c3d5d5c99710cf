import { commonPractice, rule } from '../rule.ts';

/** A check-in finds out who is silent; somebody must know what follows. */
export const checkInMissedLadderMissing = rule({
  id: 'check-in/missed-ladder-missing',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A roll call without a ladder to start when someone does not answer.',
  why: 'The roll is called to learn who does not answer. What to do then should be on the card of net control, not up for debate on the air.',
  mend: 'Add `missed` with the ladder to start.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada] } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }`,
  *check({ plan }) {
    for (const { id, name, listen, missed } of plan.checkIns.values()) {
      if (!listen && missed === undefined)
        yield {
          at: ['check-ins', id],
          message: `${name} does not say which ladder to start when someone does not answer (\`missed\`).`,
        };
    }
  },
});
