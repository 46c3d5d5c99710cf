import { expect, test } from 'vitest';
import { isZone, nearestZone } from '../../src/consequences/zone-names.ts';
import { clockChanges20262027, unchangedZones } from '../sources/schedule/clock-changes-2026-2027.ts';

test('every zone of the published rows is one', () => {
  for (const [zone] of [...clockChanges20262027, ...unchangedZones])
    expect([zone, isZone(zone)]).toEqual([zone, true]);
  expect(isZone('UTC')).toBe(true);
});

// Platforms take these too, but an abbreviation or an offset is no place whose clocks are known (tz database, theory file).
test.each(['EST', 'CET', '+01:00', 'america/new_york', 'America/Nowhere', '', 'Etc/../passwd'])(
  '"%s" is none',
  (name) => {
    expect(isZone(name)).toBe(false);
  },
);

test.each([
  ['America/New_Yrok', 'America/New_York'],
  ['New_York', 'America/New_York'],
  ['Berlin', 'Europe/Berlin'],
  ['America/NewYork', 'America/New_York'],
])('%s was most likely meant for %s', (written, meant) => {
  expect(nearestZone(written)).toBe(meant);
});

test('what people call a zone is understood, and no zone of another continent is proposed for it', () => {
  expect(nearestZone('Eastern')).toBe('America/New_York');
  expect(nearestZone('Pacific Time')).toBe('America/Los_Angeles');
  expect(nearestZone('GMT')).toBe('Europe/London');
  expect(nearestZone('New York')).toBe('America/New_York');
  expect(nearestZone('Americas/New_York')).toBe('America/New_York');
  expect(nearestZone('Eastland')).toBeUndefined();
});
