import { commonPractice, rule } from '../rule.ts';

/** A check-in of nobody is on no card. */
export const checkInNobodyExpected = rule({
  id: 'check-in/nobody-expected',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A check-in at which no member is expected.',
  why: 'Its `who` leads to nobody, so no card and no calendar shows it.',
  mend: 'List the teams and members who are expected, or remove it.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "12:00", lasts: 5 min, who: [] } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "12:00", lasts: 5 min, who: [ben] }`,
  *check({ plan }) {
    for (const { id, name, who } of plan.checkIns.values()) {
      // A team without members, or an id that leads nowhere, is found itself.
      if (who !== 'all' && who.length === 0)
        yield { at: ['check-ins', id, 'who'], message: `Nobody is expected at ${name}.` };
    }
  },
});
