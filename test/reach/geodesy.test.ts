import { describe, expect, it } from 'vitest';
import { compass, loadGeodesy } from '../../src/reach/geodesy.ts';
import { geodesics } from '../sources/reach/geodesics.ts';

const geodesy = await loadGeodesy();
const at = ([latitudeDeg, longitudeDeg]: readonly [number, number]) => ({ latitudeDeg, longitudeDeg });

describe('geodesics', () => {
  it.each(geodesics)('gives the published distance of $distanceM m', (row) => {
    const line = geodesy.line(at(row.from), at(row.to));
    expect(Math.abs(line.distanceM - row.distanceM)).toBeLessThan(row.withinM);
    // Published to 1e-5 degrees or to 0.01 seconds.
    expect(line.bearingDeg).toBeCloseTo(row.bearingDeg, 5);
    expect(line.finalBearingDeg).toBeCloseTo(row.finalBearingDeg, 5);
  });

  it('walks along a line to its far end and comes back to where it began', () => {
    const [from, to] = [at([36.6, -84.25]), at([36.65, -84.15])];
    const line = geodesy.line(from, to);
    const [start, middle, end] = geodesy.along(from, to, [0, 0.5, 1]);
    expect(start).toEqual(from);
    expect(end).toEqual(to);
    expect(middle && geodesy.line(from, middle).distanceM).toBeCloseTo(line.distanceM / 2, 6);
    const arrived = geodesy.destination(from, line.bearingDeg, line.distanceM);
    expect(arrived.latitudeDeg).toBeCloseTo(to.latitudeDeg, 9);
    expect(arrived.longitudeDeg).toBeCloseTo(to.longitudeDeg, 9);
  });

  it('writes every bearing between 0 and 360', () => {
    expect([-90, 0, 360, 540, -0].map(compass)).toEqual([270, 0, 0, 180, 0]);
  });
});
