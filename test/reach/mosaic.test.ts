import { describe, expect, it } from 'vitest';
import { type ElevationGrid, heightAt, voidHeight } from '../../src/reach/grid.ts';
import { mosaic } from '../../src/reach/mosaic.ts';

/** A grid on the plane height = 1000 + 100 x (degrees north of 36) + 50 x (degrees east of -85), so that every answer is known. */
function plane(
  name: string,
  northDeg: number,
  westDeg: number,
  stepDeg: number,
  rows: number,
  columns: number,
  lift = 0,
): ElevationGrid {
  const heightsM = new Float32Array(rows * columns);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      heightsM[row * columns + column] =
        1000 + lift + 100 * (northDeg - row * stepDeg - 36) + 50 * (westDeg + column * stepDeg + 85);
    }
  }
  return { name, northDeg, westDeg, stepNorthDeg: stepDeg, stepEastDeg: stepDeg, rows, columns, heightsM };
}

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

describe('ground heights', () => {
  it('lie on the plane between the samples of a plane', () => {
    const grid = plane('a', 37, -85, 0.01, 101, 101);
    expect(heightAt(grid, at(36.4321, -84.7654))).toBeCloseTo(1000 + 43.21 + 50 * 0.2346, 3);
    expect(heightAt(grid, at(37, -85))).toBeCloseTo(1100, 3);
    expect(heightAt(grid, at(36, -84))).toBeCloseTo(1050, 3);
  });

  it('are unknown outside and beside a void, not guessed', () => {
    const grid = { ...plane('a', 37, -85, 0.01, 101, 101), heightsM: new Int16Array(101 * 101).fill(500) };
    grid.heightsM[50 * 101 + 50] = voidHeight;
    expect(heightAt(grid, at(36.505, -84.505))).toBeUndefined();
    expect(heightAt(grid, at(36.5, -84.5))).toBeUndefined();
    expect(heightAt(grid, at(36.51, -84.5))).toBe(500);
    expect(heightAt(grid, at(38, -84.5))).toBeUndefined();
  });
});

describe('several grids as one', () => {
  it('joins tiles that share no edge without a seam', () => {
    // Copernicus tiles leave out the last row and column: the next tile begins one step further.
    const tiles = [
      plane('south', 36.99, -85, 0.01, 100, 100),
      plane('north', 37.99, -85, 0.01, 100, 100),
      plane('east', 36.99, -84, 0.01, 100, 100),
      plane('corner', 37.99, -84, 0.01, 100, 100),
    ];
    const terrain = mosaic(tiles);
    for (const [latitudeDeg, longitudeDeg] of [
      [36.9965, -84.5],
      [36.5, -84.0035],
      [36.9951, -84.0049],
      [36.9935, -84.0065],
    ] as const) {
      expect(terrain.heightM(at(latitudeDeg, longitudeDeg))).toBeCloseTo(
        1000 + 100 * (latitudeDeg - 36) + 50 * (longitudeDeg + 85),
        3,
      );
    }
  });

  it('takes the finest grid that has a height, and lets voids fall through to coarser ones', () => {
    const fine = plane('fine', 36.6, -84.6, 0.001, 101, 101, 7);
    fine.heightsM[0] = Number.NaN;
    const terrain = mosaic([plane('coarse', 37, -85, 0.01, 101, 101), fine]);
    expect(terrain.heightM(at(36.55, -84.55))).toBeCloseTo(1000 + 55 + 22.5 + 7, 2);
    expect(terrain.heightM(at(36.5998, -84.5998))).toBeCloseTo(1000 + 59.98 + 20.01, 2);
    expect(terrain.heightM(at(36.9, -84.9))).toBeCloseTo(1095, 2);
    expect(terrain.heightM(at(35, -84.9))).toBeUndefined();
    expect(terrain.stepM(at(36.55, -84.55))).toBeLessThan(100);
  });

  it('has no ground at all without grids', () => {
    expect(mosaic([]).heightM(at(36.5, -84.5))).toBeUndefined();
  });
});
