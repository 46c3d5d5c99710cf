import { describe, expect, it } from 'vitest';
import { type ElevationGrid, heightAt, positionOf, sampleAt, voidHeight } from '../../src/reach/grid.ts';
import { nearestGround } from '../../src/reach/nearest-ground.ts';
import { groundUnder } from '../../src/reach/stitch-grids.ts';
import { readHills } from './terrain.fixture.ts';

const hills = await readHills();

/** Columns `from` to `to` of the hills, as a tile of their own. */
function tile(name: string, from: number, to: number): ElevationGrid {
  const columns = to - from + 1;
  const heightsM = Int16Array.from({ length: columns * hills.rows }, (_, index) =>
    Number(hills.heightsM[Math.floor(index / columns) * hills.columns + from + (index % columns)]),
  );
  return { ...hills, name, columns, westDeg: hills.westDeg + from * hills.stepEastDeg, heightsM };
}

const [west, east] = [tile('west', 0, 200), tile('east', 200, hills.columns - 1)];
const inWest = { latitudeDeg: 36.67333, longitudeDeg: -84.3 };
const inEast = { latitudeDeg: 36.6042, longitudeDeg: -84.2083 };

describe('ground under places on several tiles', () => {
  it('is the one grid that the tiles were cut from', () => {
    const whole = groundUnder([west, east], [inWest, inEast]);
    expect(whole?.name).toBe('west, east');
    expect(whole?.columns).toBe(hills.columns);
    expect(whole?.heightsM).toEqual(hills.heightsM);
    expect(whole?.westDeg).toBeCloseTo(hills.westDeg, 12);
  });

  it('needs no shared edge: tiles of cell areas lie side by side', () => {
    const whole = groundUnder([tile('a', 0, 99), tile('b', 100, hills.columns - 1)], [inWest, inEast]);
    expect(whole?.heightsM).toEqual(hills.heightsM);
  });

  it('takes from the other tile what one has void on the edge they share', () => {
    const holed = { ...west, heightsM: Int16Array.from(west.heightsM) };
    holed.heightsM[50 * holed.columns + 200] = voidHeight;
    const whole = groundUnder([east, holed], [inWest, inEast]);
    if (!whole) throw new Error('not stitched');
    expect(sampleAt(whole, 50, 200)).toBe(sampleAt(hills, 50, 200));
  });

  it('leaves void what no tile has', () => {
    const whole = groundUnder([tile('a', 0, 150), tile('b', 200, hills.columns - 1)], [inWest, inEast]);
    if (!whole) throw new Error('not stitched');
    expect(sampleAt(whole, 50, 170)).toBeUndefined();
  });

  it('is cut to what is wanted around the places', () => {
    const near = groundUnder([west, east], [inEast], 1000);
    if (!near) throw new Error('nothing');
    expect(near.columns).toBeLessThan(40);
    expect(heightAt(near, inEast)).toBeCloseTo(heightAt(hills, inEast) ?? Number.NaN, 6);
  });

  it('is a coarser grid where only that has both, and none where no grid has', () => {
    const coarse: ElevationGrid = {
      name: 'coarse',
      columns: 4,
      rows: 4,
      northDeg: 37,
      westDeg: -85,
      stepNorthDeg: 0.34,
      stepEastDeg: 0.34,
      heightsM: new Int16Array(16).fill(300),
    };
    expect(groundUnder([west, coarse], [inWest, inEast])?.name).toBe('coarse');
    expect(groundUnder([west], [inWest, inEast])).toBeUndefined();
  });

  it('lets people walk over the seam to where a repeater on the other tile is reached', () => {
    const search = {
      from: positionOf(hills, 100, 197),
      station: { position: inEast, antennaM: 12 },
      cellAntennaM: 1.5,
      frequencyHz: 146e6,
      greatestLossDb: 135,
      spreadDb: 8,
      wanted: 0.95,
      mostWalkS: 3600,
    };
    const grid = groundUnder([west, east], [search.from, inEast], 7000);
    if (!grid) throw new Error('not stitched');
    const [over, uncut] = [nearestGround({ ...search, grid }), nearestGround({ ...search, grid: hills })];
    if (!over.ok || !uncut.ok) throw new Error('no answer');
    expect(over.spots.map(({ walkS }) => Math.round(walkS))).toEqual(
      uncut.spots.map(({ walkS }) => Math.round(walkS)),
    );
    expect(over.best.marginDb).toBeCloseTo(uncut.best.marginDb, 1);
    expect(nearestGround({ ...search, grid: west }).ok).toBe(false);
  });
});
