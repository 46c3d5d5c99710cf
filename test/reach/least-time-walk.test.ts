import { describe, expect, it } from 'vitest';
import { type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import { leastTimeWalks, wayTo } from '../../src/reach/least-time-walk.ts';
import { offPathFactor, toblerKmh } from '../../src/reach/walking.ts';

const size = 61;

/** Three-second cells on the equator: 92.66 m each way on a sphere of 111 195 m a degree. */
function grid(height: (row: number, column: number) => number): ElevationGrid {
  const heightsM = Float32Array.from({ length: size * size }, (_, index) =>
    height(Math.floor(index / size), index % size),
  );
  return {
    name: 'made',
    rows: size,
    columns: size,
    northDeg: 0.025,
    westDeg: 0,
    stepNorthDeg: 1 / 1200,
    stepEastDeg: 1 / 1200,
    heightsM,
  };
}
const cellM = 111_195 / 1200;

describe('the quickest way on foot', () => {
  it('is straight over flat ground, and at most 3 % longer than the crow flies in any direction', () => {
    const flat = grid(() => 200);
    const walks = leastTimeWalks(flat, positionOf(flat, 30, 30), 3600 * 3);
    const kmh = toblerKmh(0) * offPathFactor;
    for (const [row, column] of [
      [30, 50],
      [10, 30],
      [50, 50],
      [20, 50],
      [37, 52],
      [9, 21],
    ] as const) {
      const straightM = Math.hypot(row - 30, column - 30) * cellM;
      const walkedS = walks?.timeS[row * size + column] ?? 0;
      const ratio = walkedS / ((straightM / 1000 / kmh) * 3600);
      expect(ratio).toBeGreaterThan(0.999);
      // Sixteen directions: the worst, half-way between two, is 1.0275 times the straight line.
      expect(ratio).toBeLessThan(1.03);
    }
  });

  it('goes round a wall, through its gate', () => {
    const walled = grid((row, column) => (column === 40 && row !== 5 ? 900 : 200));
    const walks = leastTimeWalks(walled, positionOf(walled, 30, 30), 3600 * 5);
    if (!walks) throw new Error('no ground');
    const way = wayTo(walled, walks, 30 * size + 50);
    expect(way.length).toBeGreaterThan(20);
    expect(
      way.some(
        ({ latitudeDeg, longitudeDeg }) =>
          Math.abs(longitudeDeg - 40 / 1200) < 1e-9 && Math.abs(latitudeDeg - (0.025 - 5 / 1200)) < 1e-9,
      ),
    ).toBe(true);
    expect(walks.climbM[30 * size + 50]).toBe(0);
  });

  it('takes longer up a slope than down it, and counts what was climbed', () => {
    const slope = grid((row) => 10 * (60 - row));
    const [foot, top] = [positionOf(slope, 50, 30), positionOf(slope, 20, 30)];
    const up = leastTimeWalks(slope, foot, 3600 * 5);
    const down = leastTimeWalks(slope, top, 3600 * 5);
    expect(up?.timeS[20 * size + 30]).toBeGreaterThan(down?.timeS[50 * size + 30] ?? 0);
    expect(up?.climbM[20 * size + 30]).toBeCloseTo(300, 3);
    expect(down?.climbM[50 * size + 30]).toBe(0);
  });

  it('stops at the time given, and says nothing of a place off the grid', () => {
    const flat = grid(() => 200);
    const walks = leastTimeWalks(flat, positionOf(flat, 30, 30), 600);
    expect(Math.max(...(walks?.timeS.filter((time) => !Number.isNaN(time)) ?? []))).toBeLessThanOrEqual(600);
    expect(walks?.timeS[0]).toBeNaN();
    expect(leastTimeWalks(flat, { latitudeDeg: 5, longitudeDeg: 5 }, 600)).toBeUndefined();
  });
});
