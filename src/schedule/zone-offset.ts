/**
 * What the clocks of a zone show less UTC, from the IANA time zone database that comes with the platform.
 * Read through the platform's own formatter, which is there without loading anything.
 */

import { dayMs } from './calendar-date.ts';

/** Milliseconds to add to an instant (milliseconds since 1970-01-01T00:00Z) to get what the clocks show. */
export type OffsetAt = (instantMs: number) => number;

/**
 * The formatter is asked for the ends of each day only: where the two agree, all instants between them do, since no
 * zone changes twice within one day.
 * @throws {RangeError} for a zone the database does not have
 */
export function zoneOffset(zone: string): OffsetAt {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  const known = new Map<number, number>();
  const at = (instantMs: number): number => {
    const remembered = known.get(instantMs);
    if (remembered !== undefined) return remembered;
    const parts = new Map(format.formatToParts(instantMs).map(({ type, value }) => [type, Number(value)]));
    const part = (name: Intl.DateTimeFormatPartTypes) => parts.get(name) ?? 0;
    const shown = Date.UTC(
      part('year'),
      part('month') - 1,
      part('day'),
      part('hour'),
      part('minute'),
      part('second'),
    );
    const offsetMs = shown - Math.floor(instantMs / 1000) * 1000;
    known.set(instantMs, offsetMs);
    return offsetMs;
  };
  return (instantMs) => {
    const start = Math.floor(instantMs / dayMs) * dayMs;
    const offsetMs = at(start);
    return instantMs === start || at(start + dayMs) === offsetMs ? offsetMs : at(instantMs);
  };
}
