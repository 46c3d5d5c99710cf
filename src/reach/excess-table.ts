/**
 * What the smooth earth adds to the loss ({@link ./smooth-terms.ts}) as a table over the distance and the heights of the two antennas above
 * the surface, for rasters of millions of cells: half the equations of the method stand behind it.
 *
 * Steps are even parts of a doubling: the upper bits of a floating number (IEEE 754 single precision) are the entry, the rest how far it is on to the
 * next. Entries are worked out when a cell first needs them. Between eight of them values run straight, but only where that was tried: in the
 * middle, where straight lines are farthest from a curve, it must be within {@link straightDb} of the equations, which are asked elsewhere.
 */
import type { CellBatch } from './ground-ahead.ts';
import { type SmoothEarth, smoothExcessDb } from './smooth-terms.ts';

/** Steps of a doubling, as a power of two. */
const stepBits = 3;
const shift = 23 - stepBits;
const restMask = (1 << shift) - 1;
const perRest = 1 / (1 << shift);

const straightDb = 0.05;

/** Of a box between eight entries: that nothing is added in it, that values run straight, that the equations must be asked. Not looked at yet: 0. */
const nothing = 1;
const straight = 2;
const bent = 3;

const single = new Float32Array(1);
const word = new Int32Array(single.buffer);

export interface ExcessTable {
  readonly earth: SmoothEarth;
  /** Steps of the ground, km: how near to an antenna a sample stands. */
  readonly stepKm: number;
  readonly firstDistance: number;
  readonly distances: number;
  readonly firstStation: number;
  readonly stations: number;
  readonly firstCell: number;
  readonly cells: number;
  /** dB; 0 until worked out. */
  readonly entries: Float32Array;
  readonly boxes: Uint8Array;
}

/** No antenna stands higher above the smooth surface, m: twice the highest mountain. */
const highestM = 16_384;

export function excessTable(
  earth: SmoothEarth,
  stationAntennaM: number,
  cellAntennaM: number,
  nearestKm: number,
  farthestKm: number,
  stepKm: number,
): ExcessTable {
  const firstDistance = stepOf(nearestKm);
  const firstStation = stepOf(stationAntennaM);
  const firstCell = stepOf(cellAntennaM);
  const distances = stepOf(farthestKm) - firstDistance + 2;
  const stations = stepOf(highestM) - firstStation + 2;
  const cells = stepOf(highestM) - firstCell + 2;
  return {
    earth,
    stepKm,
    firstDistance,
    distances,
    firstStation,
    stations,
    firstCell,
    cells,
    entries: new Float32Array(distances * stations * cells),
    boxes: new Uint8Array(distances * stations * cells),
  };
}

function stepOf(value: number): number {
  single[0] = value;
  return (word[0] ?? 0) >> shift;
}

/** The value of a step, or of a place so far on to the next. */
function valueAt(step: number, part: number): number {
  word[0] = (step << shift) + part * (1 << shift);
  return single[0] ?? 0;
}

/** What is reckoned with, of each cell of a batch: its distance, km, and the antennas above the smooth surface, m, in turn; and the bits of both. */
export interface ExcessBatch {
  readonly km: Float32Array;
  readonly kmWords: Int32Array;
  readonly aboveM: Float32Array;
  readonly aboveWords: Int32Array;
}

export function excessBatch(room: number): ExcessBatch {
  const km = new Float32Array(room);
  const aboveM = new Float32Array(2 * room);
  return { km, aboveM, kmWords: new Int32Array(km.buffer), aboveWords: new Int32Array(aboveM.buffer) };
}

/** An antenna stands so near the ground, or the other, that it counts where the sample next to it is: no table has that. */
const nearShare = 4;

/**
 * Fills what the smooth earth adds, dB, never below 0, for each cell.
 *
 * @param samplesKm distances of the samples, which tell where the first and the last before a cell stand
 */
export function fillExcess(
  table: ExcessTable,
  { count, at, km: cellsKm }: CellBatch,
  { km, kmWords, aboveM, aboveWords }: ExcessBatch,
  samplesKm: Float64Array,
  excessDb: Float64Array,
): void {
  const { firstDistance, distances, firstStation, stations, firstCell, cells, entries, boxes, stepKm } =
    table;
  const endKm = nearShare * stepKm;
  const slice = stations * cells;
  for (let index = 0; index < count; index++) km[index] = cellsKm[index] ?? 0;
  for (let index = 0; index < count; index++) {
    const d = km[index] ?? 0;
    const h1 = aboveM[2 * index] ?? 0;
    const h2 = aboveM[2 * index + 1] ?? 0;
    const dWord = kmWords[index] ?? 0;
    const stationWord = aboveWords[2 * index] ?? 0;
    const cellWord = aboveWords[2 * index + 1] ?? 0;
    const k = (dWord >> shift) - firstDistance;
    const i = (stationWord >> shift) - firstStation;
    const j = (cellWord >> shift) - firstCell;
    const isInTable = k >= 0 && k < distances - 1 && i >= 0 && i < stations - 1 && j >= 0 && j < cells - 1;
    let box = bent;
    const near = (k * stations + i) * cells + j;
    if (isInTable && endKm * h1 < d * h2 && endKm * h2 < d * h1) box = boxes[near] || tryBox(table, k, i, j);
    if (box === nothing) excessDb[index] = 0;
    else if (box === straight) {
      const far = near + slice;
      const v000 = entries[near] ?? 0;
      const v010 = entries[near + cells] ?? 0;
      const v100 = entries[far] ?? 0;
      const v110 = entries[far + cells] ?? 0;
      const partJ = (cellWord & restMask) * perRest;
      const v00 = v000 + partJ * ((entries[near + 1] ?? 0) - v000);
      const v01 = v010 + partJ * ((entries[near + cells + 1] ?? 0) - v010);
      const v10 = v100 + partJ * ((entries[far + 1] ?? 0) - v100);
      const v11 = v110 + partJ * ((entries[far + cells + 1] ?? 0) - v110);
      const partI = (stationWord & restMask) * perRest;
      const v0 = v00 + partI * (v01 - v00);
      const v1 = v10 + partI * (v11 - v10);
      const more = v0 + (dWord & restMask) * perRest * (v1 - v0);
      excessDb[index] = Math.max(more, 0);
    } else {
      const samples = (at[index] ?? 0) - 1;
      const [firstKm, lastKm] = [samplesKm[1] ?? 0, samplesKm[samples] ?? 0];
      excessDb[index] = Math.max(0, smoothExcessDb(table.earth, d, h1, h2, { firstKm, lastKm, samples }));
    }
  }
}

/** Works out the corners of a box, and says what it is good for. */
function tryBox(table: ExcessTable, k: number, i: number, j: number): number {
  const { stations, cells, boxes } = table;
  let sum = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let corner = 0; corner < 8; corner++) {
    const excess = entryAt(table, k + (corner >> 2), i + ((corner >> 1) & 1), j + (corner & 1));
    sum += excess;
    most = Math.max(most, excess);
  }
  const middle = excessAt(table, k, i, j, 0.5);
  // The curve falls with either height and bends little between, so that nowhere in the box it is above a corner by more than that.
  const isNothing = most <= 0 && middle <= 0;
  const box = isNothing ? nothing : Math.abs(middle - sum / 8) <= straightDb ? straight : bent;
  boxes[(k * stations + i) * cells + j] = box;
  return box;
}

function entryAt(table: ExcessTable, k: number, i: number, j: number): number {
  const { entries, stations, cells } = table;
  const place = (k * stations + i) * cells + j;
  const known = entries[place] ?? 0;
  if (known !== 0) return known;
  const excess = excessAt(table, k, i, j, 0);
  entries[place] = excess;
  return excess;
}

function excessAt(table: ExcessTable, k: number, i: number, j: number, part: number): number {
  const { earth, stepKm } = table;
  const d = valueAt(k + table.firstDistance, part);
  const samples = Math.max(1, Math.round(d / stepKm) - 1);
  return smoothExcessDb(earth, d, valueAt(i + table.firstStation, part), valueAt(j + table.firstCell, part), {
    firstKm: stepKm,
    lastKm: d - stepKm,
    samples,
  });
}
