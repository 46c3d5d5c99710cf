import { forward, toPoint } from 'mgrs';
import { describe, expect, it } from 'vitest';
import { readMgrs, writeMgrs } from '../../src/reach/mgrs.ts';
import { fromUtm, toUtm } from '../../src/reach/utm.ts';
import { gridReferences } from '../sources/reach/grid-references.ts';

describe('MGRS and UTM', () => {
  it.each(gridReferences)(
    'puts $mgrs on its published grid coordinates',
    ({ zone, eastingM, northingM, ...position }) => {
      const point = toUtm(position);
      expect(point.zone).toBe(zone);
      expect(point.eastingM).toBeCloseTo(eastingM, 2);
      expect(point.northingM).toBeCloseTo(northingM, 2);
      const back = fromUtm(point);
      expect(back.latitudeDeg).toBeCloseTo(position.latitudeDeg, 10);
      expect(back.longitudeDeg).toBeCloseTo(position.longitudeDeg, 10);
    },
  );

  it.each(gridReferences)(
    'writes $mgrs for its coordinates and reads it back within its square',
    ({ mgrs, ...position }) => {
      expect(writeMgrs(position, 5)).toBe(mgrs);
      const reading = readMgrs(mgrs);
      expect(reading.ok).toBe(true);
      if (!reading.ok) return;
      expect(Math.abs(reading.position.latitudeDeg - position.latitudeDeg) * 111_000).toBeLessThan(1);
    },
  );

  it('reads a reference with spaces and any even number of digits', () => {
    expect(readMgrs('38S MB 44140 84706')).toEqual(readMgrs('38smb4414084706'));
    for (const short of ['38SMB', '38SMB48', '38SMB4484']) expect(readMgrs(short).ok, short).toBe(true);
  });

  it('agrees with the mgrs package on every square of the land, to a metre', () => {
    // Reference library: npm mgrs 2.2.0. Positions laid over the globe by the golden ratio, so that no zone repeats a pattern.
    for (let index = 1; index <= 2000; index++) {
      const latitudeDeg = (Math.asin(2 * ((index * 0.6180339887) % 1) - 1) * 180) / Math.PI;
      const longitudeDeg = ((index * 0.7548776662) % 1) * 360 - 180;
      if (latitudeDeg < -79.9 || latitudeDeg > 83.9) continue;
      const theirs = forward([longitudeDeg, latitudeDeg], 5);
      const ours = writeMgrs({ latitudeDeg, longitudeDeg }, 5) ?? '';
      const [theirLongitude, theirLatitude] = toPoint(theirs);
      const reading = readMgrs(ours);
      expect(reading, ours).toMatchObject({ ok: true });
      if (!reading.ok) continue;
      // Two squares of a metre that touch have centres at most 1.5 m apart.
      expect(Math.abs(reading.position.latitudeDeg - theirLatitude) * 111_000, ours).toBeLessThan(1.5);
      const eastDeg = Math.abs(reading.position.longitudeDeg - theirLongitude);
      expect(
        Math.min(eastDeg, 360 - eastDeg) * 111_000 * Math.cos((latitudeDeg * Math.PI) / 180),
        ours,
      ).toBeLessThan(1.5);
    }
  });

  it('leaves the poles, where the grid is another, to degrees', () => {
    expect(writeMgrs({ latitudeDeg: 85, longitudeDeg: 10 })).toBeUndefined();
    expect(readMgrs('ZAH0000').ok).toBe(false);
  });
});
