/**
 * What the clocks of a zone show less UTC, from the IANA time zone database that comes with the platform.
 * Read through the platform's own formatter, which is there without loading anything.
 */

/** Milliseconds to add to an instant (milliseconds since 1970-01-01T00:00Z) to get what the clocks show. */
export type OffsetAt = (instantMs: number) => number;

/**
 * Remembers what it was asked, since schedules ask for the same midnights again and again.
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
  return (instantMs) => {
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
}
