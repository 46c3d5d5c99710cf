/**
 * A time of day on the clocks of a zone, as an instant; or the news that it is none or two.
 *
 * Where the clocks are put forward a time of day may not exist, and where they are put back it comes twice.
 * RFC 5545, 3.3.5, tells calendars to take the offset before the change for a time that does not exist, and
 * the first of the two for one that comes twice. People read their clocks instead, so neither is settled here
 * in silence: the reading of the RFC is given beside the news.
 */
import { dayMs, minuteMs } from './calendar-date.ts';
import type { OffsetAt } from './zone-offset.ts';

/** Instants in milliseconds since 1970-01-01T00:00Z. */
export type Moment =
  | { readonly kind: 'once'; readonly instantMs: number }
  /** The time does not exist; `instantMs` is where calendars put it, which clocks show as `shift` later. */
  | { readonly kind: 'gap'; readonly instantMs: number; readonly shiftMin: number }
  /** It comes twice; `instantMs` is the first. */
  | { readonly kind: 'overlap'; readonly instantMs: number; readonly secondMs: number };

/**
 * @param date ISO date on the clocks of the zone
 * @param minute of that day, 0 to 1439
 */
export function momentOf(offsetAt: OffsetAt, date: string, minute: number): Moment {
  const midnight = Date.parse(date);
  const shown = midnight + minute * minuteMs;
  // Far enough to either side for any zone of the world, and no zone changes twice within three days.
  const before = offsetAt(midnight - dayMs);
  const after = offsetAt(midnight + 2 * dayMs);
  if (before === after) return { kind: 'once', instantMs: shown - before };
  const [early, late] = [shown - before, shown - after];
  const earlyHolds = offsetAt(early) === before;
  const lateHolds = offsetAt(late) === after;
  if (earlyHolds && lateHolds) return { kind: 'overlap', instantMs: early, secondMs: late };
  if (earlyHolds) return { kind: 'once', instantMs: early };
  if (lateHolds) return { kind: 'once', instantMs: late };
  return { kind: 'gap', instantMs: early, shiftMin: (after - before) / minuteMs };
}

/** A time of day in UTC, which has no gaps. */
export function utcMoment(date: string, minute: number): Moment {
  return { kind: 'once', instantMs: Date.parse(date) + minute * minuteMs };
}
