import { describe, expect, it } from 'vitest';
import { Refusal } from '../../src/findings/refusal.ts';
import { heightAt } from '../../src/reach/grid.ts';
import { readHgt } from '../../src/reach/read-hgt.ts';

/** A tile as NASA/JPL describe it: big-endian, rows from the north; here the height is 10 x row + column in the first hundred of each. */
function tile(side: number): Uint8Array {
  const bytes = new Uint8Array(2 * side * side);
  const view = new DataView(bytes.buffer);
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      view.setInt16(2 * (row * side + column), row < 100 && column < 100 ? 10 * row + column : -32768);
    }
  }
  return bytes;
}

describe('SRTM tiles', () => {
  it('puts the first sample on the north-west corner, one degree north of the name', () => {
    const grid = readHgt(tile(1201), 'terrain/N36W085.hgt');
    expect(heightAt(grid, { latitudeDeg: 37, longitudeDeg: -85 })).toBe(0);
    expect(heightAt(grid, { latitudeDeg: 37 - 2 / 1200, longitudeDeg: -85 + 3 / 1200 })).toBeCloseTo(23, 6);
    expect(heightAt(grid, { latitudeDeg: 36.5, longitudeDeg: -84.5 })).toBeUndefined();
  });

  it('counts one further from zero in the south and west', () => {
    // NASA/JPL: S01W001 covers 1 to 0 degrees south and west.
    const grid = readHgt(tile(1201), 'S01W001.hgt');
    expect([grid.northDeg, grid.westDeg]).toEqual([0, -1]);
  });

  it('reads one-second tiles by their size', () => {
    expect(readHgt(tile(3601), 'n00e000.hgt')).toMatchObject({
      rows: 3601,
      columns: 3601,
      stepNorthDeg: 1 / 3600,
    });
  });

  it('refuses a file of another size or without its name', () => {
    expect(() => readHgt(tile(1201).subarray(2), 'N36W085.hgt')).toThrow(Refusal);
    expect(() => readHgt(tile(1201), 'heights.hgt')).toThrow(/corner/);
    expect(() => readHgt(tile(1201), 'N95W085.hgt')).toThrow(/nowhere/);
  });
});
