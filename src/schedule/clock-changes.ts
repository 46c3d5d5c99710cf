/**
 * When the clocks of a zone are put forward or back, from the IANA time zone database that comes with the
 * platform. Times of day between the old and the new reading then do not exist, or come twice (RFC 5545,
 * 3.3.5, says how calendars take them).
 */
import { dayMs, minuteMs } from './calendar-date.ts';
import { zoneOffset } from './zone-offset.ts';

export interface ClockChange {
  /** ISO date on the clocks of the zone, at the change. */
  readonly date: string;
  /** `gap`: put forward, times are left out; `overlap`: put back, times come twice. */
  readonly kind: 'gap' | 'overlap';
  /** Minutes after midnight at which the missing or doubled times begin, and the first after them. */
  readonly fromMinute: number;
  readonly toMinute: number;
  /** The instant, milliseconds since 1970-01-01T00:00Z. */
  readonly instantMs: number;
  /** What the clocks show less UTC, before and after. */
  readonly oldOffsetMin: number;
  readonly newOffsetMin: number;
}

/**
 * Changes from one ISO date to another, both included, in order.
 * @throws {RangeError} for a zone the database does not have
 */
export function clockChanges(zone: string, fromDate: string, toDate: string): readonly ClockChange[] {
  const offsetAt = zoneOffset(zone);
  const changes: ClockChange[] = [];
  // A day to either side, for zones far from Greenwich. Two changes are never less than some weeks apart.
  let at = Date.parse(fromDate) - dayMs;
  const end = Date.parse(toDate) + 2 * dayMs;
  let offset = offsetAt(at);
  while (at < end) {
    const next = Math.min(at + 7 * dayMs, end);
    const nextOffset = offsetAt(next);
    if (nextOffset !== offset) {
      const change = changeAt(firstWithout(offset, at, next, offsetAt), offset, nextOffset);
      if (fromDate <= change.date && change.date <= toDate) changes.push(change);
    }
    at = next;
    offset = nextOffset;
  }
  return changes;
}

function changeAt(instantMs: number, oldOffsetMs: number, newOffsetMs: number): ClockChange {
  const first = instantMs + Math.min(oldOffsetMs, newOffsetMs);
  const fromMinute = Math.floor((((first % dayMs) + dayMs) % dayMs) / minuteMs);
  return {
    date: new Date(first).toISOString().slice(0, 10),
    kind: newOffsetMs > oldOffsetMs ? 'gap' : 'overlap',
    fromMinute,
    toMinute: fromMinute + Math.abs(newOffsetMs - oldOffsetMs) / minuteMs,
    instantMs,
    oldOffsetMin: oldOffsetMs / minuteMs,
    newOffsetMin: newOffsetMs / minuteMs,
  };
}

/** The first minute whose offset is another than before, by halving. */
function firstWithout(
  offset: number,
  before: number,
  after: number,
  offsetAt: (instantMs: number) => number,
): number {
  let low = before;
  let high = after;
  while (high - low > minuteMs) {
    const middle = low + Math.round((high - low) / 2 / minuteMs) * minuteMs;
    if (offsetAt(middle) === offset) low = middle;
    else high = middle;
  }
  return high;
}
