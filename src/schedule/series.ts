/**
 * Every time a thing is held between two dates: its days and its times of day, as moments, each counted from
 * the start of the series. Days of the week need no library; a rule of recurrence brings its own with it.
 */
import { addDays, isoWeekday, minuteMs } from './calendar-date.ts';
import { type Moment, momentOf, utcMoment } from './moment.ts';
import { type DatesOf, endOf } from './recurrence.ts';
import type { TurnCount } from './turn.ts';
import type { OffsetAt } from './zone-offset.ts';

export interface Series {
  readonly days:
    | { readonly kind: 'weekdays'; readonly isoDays: readonly number[] }
    | { readonly kind: 'recurrence'; readonly rrule: string };
  /** Minutes after midnight of the day, 1440 and more past the next midnight. */
  readonly minutes: readonly number[];
  /** Days and times are in UTC rather than on the clocks of the zone. */
  readonly utc: boolean;
}

export interface SeriesTime extends TurnCount {
  /** ISO date and minute of the day, on the clocks the series goes by. */
  readonly date: string;
  readonly minute: number;
  readonly moment: Moment;
}

/**
 * @param start the ISO date from which the series is counted; nothing is held before it
 * @param from the first ISO date wanted, `to` the last, both by the day a time belongs to
 * @param datesOf needed for rules of recurrence alone
 * @throws {Error} if a rule of recurrence comes without `datesOf`: a fault of the caller
 */
export function seriesTimes(
  series: Series,
  start: string,
  from: string,
  to: string,
  offsetAt: OffsetAt,
  datesOf?: DatesOf,
): readonly SeriesTime[] {
  const times: SeriesTime[] = [];
  let daysBefore = 0;
  let timesBefore = 0;
  for (const day of daysOf(series, start, to, datesOf)) {
    let held = 0;
    for (const dayMinute of series.minutes) {
      const date = addDays(day, Math.floor(dayMinute / 1440));
      const minute = dayMinute % 1440;
      // Times before the wanted ones are counted; only a rule that ends at an instant must know when they are.
      if (day < from && !endsAtTime(series)) {
        held += 1;
        continue;
      }
      const moment = series.utc ? utcMoment(date, minute) : momentOf(offsetAt, date, minute);
      if (isOver(series, date, minute, moment)) continue;
      if (day >= from) times.push({ date, minute, moment, daysBefore, timesBefore: timesBefore + held });
      held += 1;
    }
    if (held > 0) daysBefore += 1;
    timesBefore += held;
  }
  return times;
}

function daysOf(
  { days }: Series,
  start: string,
  to: string,
  datesOf: DatesOf | undefined,
): readonly string[] {
  if (days.kind === 'recurrence') {
    if (!datesOf) throw new Error('A rule of recurrence needs the library that reads it.');
    return datesOf(days.rrule, start, start, to);
  }
  const held: string[] = [];
  for (let date = start; date <= to; date = addDays(date, 1)) {
    if (days.isoDays.includes(isoWeekday(date))) held.push(date);
  }
  return held;
}

function endsAtTime({ days }: Series): boolean {
  const end = days.kind === 'recurrence' ? endOf(days.rrule) : undefined;
  return end !== undefined && end.by !== 'date';
}

function isOver({ days }: Series, date: string, minute: number, moment: Moment): boolean {
  const end = days.kind === 'recurrence' ? endOf(days.rrule) : undefined;
  if (end === undefined) return false;
  return end.by === 'instant'
    ? moment.instantMs > end.atMs
    : end.by === 'clock' && Date.parse(date) + minute * minuteMs > end.atMs;
}
