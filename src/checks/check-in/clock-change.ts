import { beginsOn, startMinutes, timeText } from '../../consequences/starts.ts';
import { isZone } from '../../consequences/zone-names.ts';
import { clockChanges } from '../../schedule/clock-changes.ts';
import { rule } from '../rule.ts';

/** Twice a year an hour is left out or comes twice; a check-in in it is missed or held twice. */
export const checkInClockChange = rule({
  id: 'check-in/clock-change',
  severity: 'warning',
  basis: 'consistency',
  looksFor:
    'A check-in at a time that does not exist, or comes twice, on a day within the plan on which the clocks change.',
  why: 'In the hour that the clocks leave out nobody can begin; in the one that comes twice half the group comes at the first and half at the second. Calendars differ too in what they make of it.',
  mend: 'Move the check-in out of that hour, or give its time in UTC.',
  sources: [{ document: 'RFC 5545', section: '3.3.5' }, { document: 'IANA time zone database' }],
  bad: `
check-ins:
  night: { name: Night check-in, channel: 1, days: every day, at: "02:30", lasts: 15 min, who: all, control: [ada], missed: first } # finding`,
  good: `
check-ins:
  night: { name: Night check-in, channel: 1, days: every day, at: "03:30", lasts: 15 min, who: all, control: [ada], missed: first }`,
  *check({ plan }) {
    const local = [...plan.checkIns.values()].filter(
      // A watch that repeats loses one start of many.
      ({ at, listen, repeatsMin }) => !at.utc && !(listen && repeatsMin !== undefined),
    );
    if (local.length === 0 || !isZone(plan.timezone)) return;
    // However far off the review is, the first changes show what the later ones do.
    const [until] = [plan.reviewBy ?? yearsAfter(plan.effective, 1), yearsAfter(plan.effective, 5)].sort();
    const changes = clockChanges(plan.timezone, plan.effective, until ?? plan.effective);
    for (const checkIn of local) {
      const met = changes.filter(
        ({ date, fromMinute, toMinute }) =>
          beginsOn(checkIn.days, date) &&
          startMinutes(checkIn).some((minute) => fromMinute <= minute && minute < toMinute),
      );
      const clauses = met
        .slice(0, 2)
        .map(({ date, kind }) => `${kind === 'gap' ? 'does not exist' : 'comes twice'} on ${date}`);
      if (clauses.length > 0)
        yield {
          at: ['check-ins', checkIn.id, 'at'],
          message: `${timeText(checkIn.at)} in ${plan.timezone} ${clauses.join(' and ')}, when the clocks change.`,
        };
    }
  },
});

function yearsAfter(date: string, years: number): string {
  return `${Number(date.slice(0, 4)) + years}${date.slice(4).replace('-02-29', '-02-28')}`;
}
