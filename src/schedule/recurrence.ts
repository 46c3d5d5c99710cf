/**
 * Rules of recurrence (RFC 5545, 3.3.10) as dates. The work is done by rrule-temporal, which is loaded only
 * when a plan has such a rule. The rule is worked out on dates alone, so that no change of the clocks can move
 * it; an end that names an instant is held against the instant by the caller, with {@link endOf}.
 */
import { addDays } from './calendar-date.ts';

/** Dates on which a series is held, from one ISO date to another, both included. */
export type DatesOf = (rrule: string, start: string, from: string, to: string) => readonly string[];

/** Loads the library, after which dates are found without waiting. */
export async function loadRecurrence(): Promise<DatesOf> {
  const [{ RRuleTemporal }, { Temporal }] = await Promise.all([
    import('rrule-temporal'),
    import('temporal-polyfill'),
  ]);
  return (rrule, start, from, to) => {
    const end = endOf(rrule);
    const last = end && end.date < to ? end.date : to;
    if (last < from) return [];
    const rule = new RRuleTemporal({
      rruleString: rrule
        .split(';')
        .filter((part) => !part.startsWith('UNTIL='))
        .join(';'),
      dtstart: Temporal.ZonedDateTime.from(`${start}T00:00[UTC]`),
      strict: true,
    });
    return rule
      .between(new Date(`${from}T00:00Z`), new Date(`${last}T00:00Z`), true)
      .map((found) => found.toString().slice(0, 10));
  };
}

/** Where a rule ends, as it is written: by a date, by the clocks of the plan's zone, or by an instant in UTC. */
export interface RecurrenceEnd {
  /** The last ISO date that can hold an occurrence on the clocks of any zone. */
  readonly date: string;
  readonly by: 'date' | 'clock' | 'instant';
  /** The written date and time taken as UTC, milliseconds: the instant, or what the clocks must not be past. */
  readonly atMs: number;
}

export function endOf(rrule: string): RecurrenceEnd | undefined {
  const match = /(?:^|;)UNTIL=(\d{4})(\d\d)(\d\d)(?:T(\d\d)(\d\d)(\d\d)(Z?))?/.exec(rrule);
  if (!match) return undefined;
  const [, year, month, day, hour, minute, second, zulu] = match;
  const date = `${year}-${month}-${day}`;
  if (hour === undefined) return { date, by: 'date', atMs: Date.parse(`${date}T23:59:59Z`) };
  const atMs = Date.parse(`${date}T${hour}:${minute}:${second}Z`);
  return zulu === 'Z' ? { date: addDays(date, 1), by: 'instant', atMs } : { date, by: 'clock', atMs };
}
