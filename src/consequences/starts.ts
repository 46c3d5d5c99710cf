/** On which days and at which minutes a check-in begins, as far as its days follow from the week or the month alone. */
import type { CheckIn, Days, TimeOfDay } from '../plan/model.ts';
import { isoWeekday } from '../schedule/calendar-date.ts';
import { dayStarts } from '../schedule/day-starts.ts';

/** Minutes after midnight of its day at which it begins; 1440 and more past the next midnight. */
export function startMinutes({ at, until, repeatsMin }: CheckIn): readonly number[] {
  return dayStarts(at.minute, until?.minute, repeatsMin);
}

/** Days of the week, 1 Monday to 7 Sunday, on which it begins every week; undefined where weeks differ. */
export function weekdaysOf(days: Days): readonly number[] | undefined {
  if (days.kind === 'weekdays') return days.isoDays;
  const parts = partsOf(days.rrule);
  if ((parts.get('INTERVAL') ?? '1') !== '1') return undefined;
  if (parts.get('FREQ') === 'DAILY' && parts.size === 1) return [1, 2, 3, 4, 5, 6, 7];
  const byDay = parts.get('BYDAY');
  if (parts.get('FREQ') !== 'WEEKLY' || byDay === undefined) return undefined;
  return byDay.split(',').flatMap((word) => isoDays.get(word) ?? []);
}

/** Whether it surely begins on a date; false as well where only the start of the series could tell. */
export function beginsOn(days: Days, date: string): boolean {
  const weekday = isoWeekday(date);
  const weekly = weekdaysOf(days);
  if (weekly !== undefined) return weekly.includes(weekday);
  if (days.kind !== 'recurrence') return false;
  const parts = partsOf(days.rrule);
  const onlyByDay = [...parts.keys()].every((part) => ['FREQ', 'INTERVAL', 'BYDAY', 'WKST'].includes(part));
  if (parts.get('FREQ') !== 'MONTHLY' || (parts.get('INTERVAL') ?? '1') !== '1' || !onlyByDay) return false;
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const fromStart = Math.ceil(day / 7);
  const fromEnd = Math.ceil((new Date(Date.UTC(year, month, 0)).getUTCDate() - day + 1) / 7);
  return (parts.get('BYDAY') ?? '').split(',').some((word) => {
    const [, count = '', name = ''] = /^([+-]?\d*)(\w\w)$/.exec(word) ?? [];
    if (isoDays.get(name) !== weekday) return false;
    return count === '' || Number(count) === fromStart || Number(count) === -fromEnd;
  });
}

/** `07:30`, or `14:30Z`. */
export function timeText({ minute, utc }: TimeOfDay): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}${utc ? 'Z' : ''}`;
}

const isoDays = new Map(['MO', 'TU', 'WE', 'TH', 'FR', 'SA', 'SU'].map((name, index) => [name, index + 1]));

/** The parts of an RFC 5545 recurrence rule (3.3.10). */
export function partsOf(rrule: string): ReadonlyMap<string, string> {
  return new Map(
    rrule.split(';').map((part): [string, string] => {
      const [name = '', value = ''] = part.split('=');
      return [name, value];
    }),
  );
}
