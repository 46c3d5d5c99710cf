/**
 * Every check-in between two dates, on the clocks of the plan's zone and in UTC, with whose turn net control
 * is and who reads the plan check out. Nothing is held before the plan takes effect: turns and rules of
 * recurrence are counted from that date.
 */
import type { CheckIn, Plan } from '../plan/model.ts';
import { addDays, dateOf, minuteMs } from '../schedule/calendar-date.ts';
import { dayStarts } from '../schedule/day-starts.ts';
import type { Moment } from '../schedule/moment.ts';
import { type DatesOf, loadRecurrence } from '../schedule/recurrence.ts';
import { type Series, seriesTimes } from '../schedule/series.ts';
import { turnOf } from '../schedule/turn.ts';
import { type OffsetAt, zoneOffset } from '../schedule/zone-offset.ts';
import { membersOf } from './who.ts';

export interface Occurrence {
  readonly checkIn: CheckIn;
  /** As an instant; or that the clocks of that day leave it out or show it twice. */
  readonly moment: Moment;
  /** Date and minute as the plan writes them: on the clocks of its zone, or in UTC where the check-in is in UTC. */
  readonly date: string;
  readonly minute: number;
  /** What the clocks of the zone show at the instant, and how far they are from UTC. */
  readonly local: LocalTime;
  readonly utc: Omit<LocalTime, 'offsetMin'>;
  /** Net control; absent where the check-in names none. */
  readonly control?: string;
  /** Who reads the plan check out when the roll is called: members take turns in the order of the roster. */
  readonly reader?: string;
}

export interface LocalTime {
  readonly date: string;
  readonly minute: number;
  readonly offsetMin: number;
}

/**
 * @param from ISO date, `to` the last one, both by the day on the clocks that the check-in goes by
 * @param datesOf from {@link recurrenceFor}; needed where a check-in has a rule of recurrence
 */
export function occurrences(plan: Plan, from: string, to: string, datesOf?: DatesOf): readonly Occurrence[] {
  const offsetAt = zoneOffset(plan.timezone);
  return [...plan.checkIns.values()]
    .flatMap((checkIn) => occurrencesOf(plan, checkIn, from, to, offsetAt, datesOf))
    .toSorted((a, b) => a.moment.instantMs - b.moment.instantMs);
}

/** What reads the plan's rules of recurrence; loads nothing for a plan that has none. */
export async function recurrenceFor(plan: Plan): Promise<DatesOf | undefined> {
  const needed = [...plan.checkIns.values()].some(({ days }) => days.kind === 'recurrence');
  return needed ? loadRecurrence() : undefined;
}

export function seriesOf({ days, at, until, repeatsMin }: CheckIn): Series {
  return { days, minutes: dayStarts(at.minute, until?.minute, repeatsMin), utc: at.utc };
}

function occurrencesOf(
  plan: Plan,
  checkIn: CheckIn,
  from: string,
  to: string,
  offsetAt: OffsetAt,
  datesOf: DatesOf | undefined,
): readonly Occurrence[] {
  const called = membersOf(plan, checkIn.who);
  // A start past midnight belongs to the day before it, and a day in UTC is up to one off the day of the clocks.
  const dayBefore = addDays(from, -1);
  const [, begin = dayBefore] = [dayBefore, plan.effective].toSorted();
  return seriesTimes(seriesOf(checkIn), plan.effective, begin, to, offsetAt, datesOf).flatMap((time) => {
    const { date, minute, moment } = time;
    if (date < from || date > to) return [];
    const offsetMin = offsetAt(moment.instantMs) / minuteMs;
    const control = turnOf(checkIn.control, checkIn.turn, plan.effective, time);
    const reader = checkIn.listen ? undefined : readerOf(called, control, time.timesBefore);
    return [
      {
        checkIn,
        moment,
        date,
        minute,
        local: { ...clockAt(moment.instantMs + offsetMin * minuteMs), offsetMin },
        utc: clockAt(moment.instantMs),
        ...(control !== undefined && { control }),
        ...(reader !== undefined && { reader }),
      },
    ];
  });
}

/** Net control asks for the plan check and so does not read it; where they are the only one called, they do. */
function readerOf(
  called: readonly string[],
  control: string | undefined,
  timesBefore: number,
): string | undefined {
  const others = called.length > 1 ? called.filter((id) => id !== control) : called;
  return others[timesBefore % others.length];
}

function clockAt(shownMs: number): { date: string; minute: number } {
  const date = dateOf(shownMs);
  return { date, minute: Math.floor((shownMs - Date.parse(date)) / minuteMs) };
}
