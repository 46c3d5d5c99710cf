import geographiclib from 'geographiclib-geodesic';
import { expect, test } from 'vitest';
import { around, contains, greatCircle } from '../../src/regulations/ground.ts';

// GeographicLib's geodesic on WGS84 is the reference; a sphere is within 0.6 % of it.
const kilometres = (a: readonly [number, number], b: readonly [number, number]) =>
  (geographiclib.Geodesic.WGS84.Inverse(a[0], a[1], b[0], b[1]).s12 ?? Number.NaN) / 1_000;

test('a circle about Charing Cross keeps to 100 km, and holds what lies within 99', () => {
  const centre = [51.5083, -0.1233] as const;
  const circle = around(centre, 100);
  for (const point of circle) expect(Math.abs(kilometres(centre, point) - 100)).toBeLessThan(1);
  for (let bearing = 0; bearing < 360; bearing += 7) {
    const at = (km: number) => geographiclib.Geodesic.WGS84.Direct(centre[0], centre[1], bearing, km * 1_000);
    const [near, far] = [at(99), at(101.5)];
    expect(contains(circle, [near.lat2 ?? 0, near.lon2 ?? 0])).toBe(true);
    expect(contains(circle, [far.lat2 ?? 0, far.lon2 ?? 0])).toBe(false);
  }
});

test('a great circle is as long as its parts and begins and ends where it should', () => {
  const line = greatCircle([48, -95], [46.65, -92.2]);
  const parts = line.slice(1).reduce((sum, point, k) => sum + kilometres(line[k] ?? point, point), 0);
  expect(parts).toBeCloseTo(kilometres([48, -95], [46.65, -92.2]), 1);
  expect(line[0]?.[0]).toBeCloseTo(48, 9);
  expect(line.at(-1)?.[1]).toBeCloseTo(-92.2, 9);
});
