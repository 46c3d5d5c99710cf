/**
 * Light and shade on the ground, so that a map shows its hills. Source: B. K. P. Horn, "Hill shading and the reflectance map", Proc. IEEE 69
 * (1981): slopes from the eight neighbours, lit from the north-west at 45 degrees, as maps are by custom.
 */
import { type ElevationGrid, sampleAt, stepsM } from './grid.ts';

/** Brightness of each cell, 0 … 1; level ground has sin 45° = 0.707. NaN at voids. */
export function hillshade(grid: ElevationGrid, exaggeration = 1): Float32Array {
  const { rows, columns } = grid;
  const shade = new Float32Array(rows * columns);
  const light = { east: -0.5, north: 0.5, up: Math.SQRT1_2 };
  for (let row = 0; row < rows; row++) {
    const { northM, eastM } = stepsM(grid, grid.northDeg - row * grid.stepNorthDeg);
    for (let column = 0; column < columns; column++) {
      const here = sampleAt(grid, row, column);
      if (here === undefined) {
        shade[row * columns + column] = Number.NaN;
        continue;
      }
      // Beyond an edge or at a void the ground is carried on level.
      const at = (down: number, right: number) => sampleAt(grid, row + down, column + right) ?? here;
      const east =
        (at(-1, 1) + 2 * at(0, 1) + at(1, 1) - at(-1, -1) - 2 * at(0, -1) - at(1, -1)) / (8 * eastM);
      const north =
        (at(-1, -1) + 2 * at(-1, 0) + at(-1, 1) - at(1, -1) - 2 * at(1, 0) - at(1, 1)) / (8 * northM);
      const [risesEast, risesNorth] = [exaggeration * east, exaggeration * north];
      const facing =
        (light.up - light.east * risesEast - light.north * risesNorth) / Math.hypot(1, risesEast, risesNorth);
      shade[row * columns + column] = Math.max(0, facing);
    }
  }
  return shade;
}
