import { commonPractice, rule } from '../rule.ts';

/** A roll that nobody is named to call is called by nobody, or by two at once. */
export const checkInControlMissing = rule({
  id: 'check-in/control-missing',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A check-in with a roll call and without net control.',
  why: 'Everybody waits for somebody else to begin. Without a named net control the first minutes go, and then whoever begins has no list.',
  mend: 'Add `control` with the members who call the roll in turn, or `listen: true` if nobody does.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, missed: first } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }`,
  *check({ plan }) {
    for (const { id, name, listen, control } of plan.checkIns.values()) {
      if (!listen && control.length === 0)
        yield { at: ['check-ins', id], message: `${name} has a roll call, but no \`control\` who calls it.` };
    }
  },
});
