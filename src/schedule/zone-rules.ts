/**
 * The changes of a zone's clocks as a calendar file states them: rules of recurrence where the zone keeps to
 * the same weekday of the same month every year, single dates where it does not (RFC 5545, 3.6.5).
 */
import { dayMs, isoWeekday, minuteMs } from './calendar-date.ts';
import { type ClockChange, clockChanges } from './clock-changes.ts';
import { zoneOffset } from './zone-offset.ts';

export interface ZoneRule {
  /** `daylight` where the change puts the clocks forward, `standard` where it puts them back or none is made. */
  readonly kind: 'standard' | 'daylight';
  /** First change, on the clocks as they were before it. */
  readonly start: { readonly date: string; readonly minute: number };
  readonly oldOffsetMin: number;
  readonly newOffsetMin: number;
  /** RRULE of the later ones. */
  readonly rrule?: string;
  /** The later ones one by one. */
  readonly dates?: readonly { readonly date: string; readonly minute: number }[];
}

/** Years looked at: a rule that held so long is taken to hold on. */
const years = 10;

/**
 * Rules in force from the year before a date on.
 * @throws {RangeError} for a zone the database does not have
 */
export function zoneRules(zone: string, from: string): readonly ZoneRule[] {
  const first = Number(from.slice(0, 4)) - 1;
  const changes = clockChanges(zone, `${first}-01-01`, `${first + years}-12-31`);
  if (changes.length === 0) {
    const offsetMin = zoneOffset(zone)(Date.parse(from)) / minuteMs;
    return [
      {
        kind: 'standard',
        start: { date: '1970-01-01', minute: 0 },
        oldOffsetMin: offsetMin,
        newOffsetMin: offsetMin,
      },
    ];
  }
  const groups = new Map<string, Onset[]>();
  for (const onset of changes.map(onsetOf)) {
    const { date, minute, oldOffsetMin, newOffsetMin } = onset;
    const key = [oldOffsetMin, newOffsetMin, date.slice(5, 7), minute].join();
    groups.set(key, [...(groups.get(key) ?? []), onset]);
  }
  return [...groups.values()].flatMap((onsets) => {
    const [start, ...later] = onsets;
    if (!start) return [];
    const { date, minute, oldOffsetMin, newOffsetMin } = start;
    const rule = yearly(onsets, first);
    return [
      {
        kind: newOffsetMin > oldOffsetMin ? ('daylight' as const) : ('standard' as const),
        start: { date, minute },
        oldOffsetMin,
        newOffsetMin,
        ...(rule !== undefined
          ? { rrule: rule }
          : later.length > 0 && { dates: later.map((each) => ({ date: each.date, minute: each.minute })) }),
      },
    ];
  });
}

interface Onset {
  readonly date: string;
  readonly minute: number;
  readonly oldOffsetMin: number;
  readonly newOffsetMin: number;
}

/** An onset is told on the clocks before it, which where they are put back is later than what comes twice. */
function onsetOf({ instantMs, oldOffsetMin, newOffsetMin }: ClockChange): Onset {
  const shown = instantMs + oldOffsetMin * minuteMs;
  const date = new Date(shown).toISOString().slice(0, 10);
  return { date, minute: (shown - Date.parse(date)) / minuteMs, oldOffsetMin, newOffsetMin };
}

const weekdays = ['MO', 'TU', 'WE', 'TH', 'FR', 'SA', 'SU'];

/** One rule for all of them: the same weekday, counted from the start of the month or its end, every year. */
function yearly(onsets: readonly Onset[], firstYear: number): string | undefined {
  const dates = onsets.map(({ date }) => date);
  const everyYear =
    dates.length === years + 1 &&
    dates.every((date, index) => Number(date.slice(0, 4)) === firstYear + index);
  const [weekday] = new Set(dates.map(isoWeekday));
  if (!everyYear || weekday === undefined || dates.some((date) => isoWeekday(date) !== weekday))
    return undefined;
  const nth = new Set(dates.map((date) => Math.ceil(Number(date.slice(8)) / 7)));
  const fromEnd = new Set(dates.map((date) => Math.ceil((lastDay(date) - Number(date.slice(8)) + 1) / 7)));
  const count = nth.size === 1 ? [...nth][0] : fromEnd.size === 1 ? -([...fromEnd][0] ?? 0) : undefined;
  if (count === undefined) return undefined;
  const month = Number((dates[0] ?? '').slice(5, 7));
  return `FREQ=YEARLY;BYMONTH=${month};BYDAY=${count}${weekdays[weekday - 1]}`;
}

function lastDay(date: string): number {
  const [year = 0, month = 1] = date.split('-').map(Number);
  return new Date(Date.UTC(year, month, 1) - dayMs).getUTCDate();
}
