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

const straightDb = 0.1;

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

/** Antennas above the smooth surface, of each cell of a batch, m: the station's and the cell's in turn; and the bits of both. */
export interface AboveBatch {
  readonly metres: Float32Array;
  readonly words: Int32Array;
  /** The numbers of all cells, and room for those of some. */
  readonly all: Int32Array;
  readonly others: Int32Array;
}

export function aboveBatch(room: number): AboveBatch {
  const metres = new Float32Array(2 * room);
  return {
    metres,
    words: new Int32Array(metres.buffer),
    all: Int32Array.from({ length: room }, (_, cell) => cell),
    others: new Int32Array(room),
  };
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
  cells: CellBatch,
  above: AboveBatch,
  samplesKm: Float64Array,
  excessDb: Float64Array,
): void {
  const { all, others } = above;
  let left = readTable(table, cells, above, all, cells.count, excessDb);
  if (left === 0) return;
  for (let other = 0; other < left; other++) {
    const near = excessDb[others[other] ?? 0] ?? 0;
    if (near >= 0 && table.boxes[near] === 0) tryBox(table, near);
  }
  left = readTable(table, cells, above, others, left, excessDb);
  askEquations(table, cells, above, left, samplesKm, excessDb);
}

/**
 * Fills what the table has of the first so many cells that are named, and lists the others: those in a bent box, and, with the number of the box instead of dB,
 * those in one not looked at yet. A loop of nothing but reading, apart from all that fills the table: it runs over every cell.
 *
 * @returns how many others there are
 */
function readTable(
  table: ExcessTable,
  { km, kmWords }: CellBatch,
  { metres, words, others }: AboveBatch,
  named: Int32Array,
  count: number,
  excessDb: Float64Array,
): number {
  const { firstDistance, distances, firstStation, stations, firstCell, entries, boxes, stepKm } = table;
  const columns = table.cells;
  const endKm = nearShare * stepKm;
  const slice = stations * columns;
  const bits = shift;
  const mask = restMask;
  const perStep = perRest;
  const none = nothing;
  const even = straight;
  let left = 0;
  for (let name = 0; name < count; name++) {
    const index = named[name] ?? 0;
    const d = km[index] ?? 0;
    const h1 = metres[2 * index] ?? 0;
    const h2 = metres[2 * index + 1] ?? 0;
    const dWord = kmWords[index] ?? 0;
    const stationWord = words[2 * index] ?? 0;
    const cellWord = words[2 * index + 1] ?? 0;
    const k = (dWord >> bits) - firstDistance;
    const i = (stationWord >> bits) - firstStation;
    const j = (cellWord >> bits) - firstCell;
    const isInTable = k >= 0 && k < distances - 1 && i >= 0 && i < stations - 1 && j >= 0 && j < columns - 1;
    const near = (k * stations + i) * columns + j;
    const box = isInTable && endKm * h1 < d * h2 && endKm * h2 < d * h1 ? (boxes[near] ?? 0) : bent;
    if (box === none) excessDb[index] = 0;
    else if (box === even) {
      const far = near + slice;
      const v000 = entries[near] ?? 0;
      const v010 = entries[near + columns] ?? 0;
      const v100 = entries[far] ?? 0;
      const v110 = entries[far + columns] ?? 0;
      const partJ = (cellWord & mask) * perStep;
      const v00 = v000 + partJ * ((entries[near + 1] ?? 0) - v000);
      const v01 = v010 + partJ * ((entries[near + columns + 1] ?? 0) - v010);
      const v10 = v100 + partJ * ((entries[far + 1] ?? 0) - v100);
      const v11 = v110 + partJ * ((entries[far + columns + 1] ?? 0) - v110);
      const partI = (stationWord & mask) * perStep;
      const v0 = v00 + partI * (v01 - v00);
      const v1 = v10 + partI * (v11 - v10);
      const more = v0 + (dWord & mask) * perStep * (v1 - v0);
      excessDb[index] = Math.max(more, 0);
    } else {
      excessDb[index] = box === 0 ? near : -1;
      others[left++] = index;
    }
  }
  return left;
}

/** Fills what the table does not have. */
function askEquations(
  table: ExcessTable,
  { at, km }: CellBatch,
  { metres, others }: AboveBatch,
  left: number,
  samplesKm: Float64Array,
  excessDb: Float64Array,
): void {
  const firstKm = samplesKm[1] ?? 0;
  for (let other = 0; other < left; other++) {
    const index = others[other] ?? 0;
    const samples = (at[index] ?? 0) - 1;
    const more = smoothExcessDb(
      table.earth,
      km[index] ?? 0,
      metres[2 * index] ?? 0,
      metres[2 * index + 1] ?? 0,
      { firstKm, lastKm: samplesKm[samples] ?? 0, samples },
    );
    excessDb[index] = Math.max(more, 0);
  }
}

/** Works out the corners of a box, and says what it is good for. */
function tryBox(table: ExcessTable, near: number): void {
  const { stations, cells, boxes } = table;
  const j = near % cells;
  const pair = (near - j) / cells;
  const i = pair % stations;
  const k = (pair - i) / stations;
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
  boxes[near] = box;
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
