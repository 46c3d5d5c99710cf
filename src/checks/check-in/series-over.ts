import { partsOf } from '../../consequences/starts.ts';
import { rule } from '../rule.ts';

/** A series that ended before the plan begins is printed and never held. */
export const checkInSeriesOver = rule({
  id: 'check-in/series-over',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A check-in whose recurrence ends before the plan takes effect.',
  why: 'The days come from an older plan. Cards show a check-in at which nobody will be.',
  mend: 'Give the recurrence a later UNTIL, or none.',
  sources: [{ document: 'RFC 5545', section: '3.3.10' }],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: FREQ=WEEKLY;BYDAY=MO;UNTIL=20260601, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: FREQ=WEEKLY;BYDAY=MO;UNTIL=20270601, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }`,
  *check({ plan }) {
    for (const { id, name, days } of plan.checkIns.values()) {
      const until = days.kind === 'recurrence' ? partsOf(days.rrule).get('UNTIL') : undefined;
      if (until === undefined) continue;
      const last = `${until.slice(0, 4)}-${until.slice(4, 6)}-${until.slice(6, 8)}`;
      if (last < plan.effective)
        yield {
          at: ['check-ins', id, 'days'],
          message: `${name} is held until ${last}; the plan takes effect on ${plan.effective}.`,
        };
    }
  },
});
