import { assert, constantFrom, integer, property } from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { expect, it } from 'vitest';
import { zoneOffset } from '../../src/schedule/zone-offset.ts';

const zones = [
  'America/New_York',
  'Europe/Berlin',
  'Australia/Lord_Howe',
  'Asia/Kathmandu',
  'Pacific/Chatham',
  'Africa/Casablanca',
];
const offsetsAt = new Map(zones.map((zone) => [zone, zoneOffset(zone)]));

/** Temporal reads the same database by ways of its own. */
function expected(zone: string, instantMs: number): number {
  return Temporal.Instant.fromEpochMilliseconds(instantMs).toZonedDateTimeISO(zone).offsetNanoseconds / 1e6;
}

it('the clocks of a zone are as far from UTC as its database says, at any instant', () => {
  const [from, to] = [Date.UTC(2020, 0, 1), Date.UTC(2036, 0, 1)];
  assert(
    property(constantFrom(...zones), integer({ min: from, max: to }), (zone, instantMs) => {
      expect(offsetsAt.get(zone)?.(instantMs)).toBe(expected(zone, instantMs));
    }),
    { numRuns: 500 },
  );
});

it('on the day of a change it is the old offset to the minute before, and then the new one', () => {
  // 14 March 2027, 02:00 EST: 07:00 UTC (Energy Policy Act of 2005: the second Sunday of March).
  const change = Date.UTC(2027, 2, 14, 7);
  const offsetAt = zoneOffset('America/New_York');
  for (const [instantMs, hours] of [
    [change - 6 * 3_600_000, -5],
    [change - 1, -5],
    [change, -4],
    [change + 6 * 3_600_000, -4],
  ] as const)
    expect(offsetAt(instantMs) / 3_600_000).toBe(hours);
});
