/**
 * What woodland takes of the signal at the two ends of every path of a raster: ITU-R P.833 as in {@link ./woodland.ts}, by the angle at which the path
 * leaves an antenna, towards the other or over the horizon before it.
 */
import type { CellBatch } from './ground-ahead.ts';
import { depthUnderTreesM, woodlandLossDb } from './woodland.ts';

export interface WoodlandTerms {
  readonly frequencyHz: number;
  readonly stationAntennaM: number;
  readonly cellAntennaM: number;
  /** Heights of the trees around them, m; absent or 0 in the open. */
  readonly stationTreesM?: number;
  readonly cellTreesM?: number;
}

export function hasWoodland({ stationTreesM = 0, cellTreesM = 0 }: WoodlandTerms): boolean {
  return stationTreesM > 0 || cellTreesM > 0;
}

/**
 * Adds it to the loss of each cell, dB.
 *
 * @param leaving and `arriving` are the slopes at which the path leaves the station and the cell, m/km
 * @param lossDb of the whole grid
 */
export function addWoodland(
  { frequencyHz, stationAntennaM, cellAntennaM, stationTreesM = 0, cellTreesM = 0 }: WoodlandTerms,
  { count, cell }: CellBatch,
  leaving: Float64Array,
  arriving: Float64Array,
  lossDb: Float32Array,
): void {
  const taken = (treesM: number, antennaM: number, slope: number) =>
    treesM > 0 ? woodlandLossDb(frequencyHz, depthUnderTreesM(treesM, antennaM, Math.atan(slope / 1000))) : 0;
  for (let index = 0; index < count; index++) {
    const number = cell[index] ?? 0;
    lossDb[number] =
      (lossDb[number] ?? Number.NaN) +
      taken(stationTreesM, stationAntennaM, leaving[index] ?? 0) +
      taken(cellTreesM, cellAntennaM, arriving[index] ?? 0);
  }
}
