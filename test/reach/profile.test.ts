import { describe, expect, it } from 'vitest';
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import type { ElevationGrid } from '../../src/reach/grid.ts';
import { mosaic } from '../../src/reach/mosaic.ts';
import { profileOverTerrain, typedProfile } from '../../src/reach/profile.ts';

const geodesy = await loadGeodesy();
const from = { latitudeDeg: 36.6, longitudeDeg: -84.25 };
const to = { latitudeDeg: 36.65, longitudeDeg: -84.15 };

/** One degree of slope 100 m, three seconds a step; `holes` are rows without heights. */
function slope(holes: (row: number) => boolean = () => false): ElevationGrid {
  const rows = 1201;
  const heightsM = Float32Array.from({ length: rows * rows }, (_, index) => {
    const row = Math.floor(index / rows);
    return holes(row) ? Number.NaN : 500 - (100 * row) / 1200;
  });
  return {
    name: 'slope',
    rows,
    columns: rows,
    northDeg: 37,
    westDeg: -85,
    stepNorthDeg: 1 / 1200,
    stepEastDeg: 1 / 1200,
    heightsM,
  };
}

describe('profiles over terrain', () => {
  it('follow the geodesic at about the step of the grid', () => {
    const profile = profileOverTerrain(mosaic([slope()]), geodesy, from, to);
    // Distance by Karney's algorithm: 10 525.855 m.
    expect(profile.distancesKm.at(-1)).toBeCloseTo(10.525855, 6);
    const stepM = (profile.distancesKm[1] ?? 0) * 1000;
    expect(stepM).toBeGreaterThan(60);
    expect(stepM).toBeLessThanOrEqual(93);
    expect(profile.heightsM[0]).toBeCloseTo(460, 3);
    expect(profile.heightsM.at(-1)).toBeCloseTo(465, 3);
    expect(profile.gaps).toEqual([]);
  });

  it('take the elevations that a plan states for its places', () => {
    const profile = profileOverTerrain(mosaic([slope()]), geodesy, from, to, {
      startElevationM: 480,
      endElevationM: 470,
    });
    expect([profile.heightsM[0], profile.heightsM.at(-1)]).toEqual([480, 470]);
  });

  it('fill a hole of a few cells and say so', () => {
    const profile = profileOverTerrain(mosaic([slope((row) => row === 450)]), geodesy, from, to);
    expect(profile.gaps).toEqual([]);
    expect(profile.bridged).toHaveLength(1);
    expect([...profile.heightsM].every(Number.isFinite)).toBe(true);
  });

  it('say where there is no ground, and leave it out', () => {
    const profile = profileOverTerrain(mosaic([slope((row) => row > 430 && row < 450)]), geodesy, from, to);
    expect(profile.gaps).toHaveLength(1);
    expect([...profile.heightsM].some(Number.isNaN)).toBe(true);
    expect(profileOverTerrain(mosaic([]), geodesy, from, to).gaps).toEqual([
      { fromKm: 0, toKm: profile.distancesKm.at(-1) },
    ]);
  });
});

describe('profiles typed from a map', () => {
  it('run straight between the points, sampled as the method wants', () => {
    const reading = typedProfile(
      [
        [0, 410],
        [1.2, 520],
        [2.4, 402],
      ],
      2.43,
    );
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    expect(reading.profile.heightsM[6]).toBeCloseTo(465, 6);
    expect(Math.max(...reading.profile.heightsM)).toBeCloseTo(520, 6);
    expect(reading.profile).toMatchObject({ basis: 'typed', typedPoints: 3 });
    expect(reading.profile.distancesKm.length).toBeGreaterThanOrEqual(25);
  });

  it('are refused when they cannot be this path', () => {
    const reason = (points: readonly (readonly [number, number])[], km?: number) => {
      const reading = typedProfile(points, km);
      return reading.ok ? 'read' : reading.reason;
    };
    expect(
      reason([
        [0, 1],
        [1, 2],
      ]),
    ).toMatch(/three points/);
    expect(
      reason([
        [0.1, 1],
        [1, 2],
        [2, 2],
      ]),
    ).toMatch(/begins at 0/);
    expect(
      reason([
        [0, 1],
        [2, 2],
        [1, 2],
      ]),
    ).toMatch(/rise/);
    expect(
      reason(
        [
          [0, 1],
          [1, 2],
          [2, 2],
        ],
        3,
      ),
    ).toMatch(/3\.00 km apart/);
  });
});
