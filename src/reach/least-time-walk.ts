/**
 * The quickest way on foot from a place to every cell around it, over the ground and not as the crow flies: E. W. Dijkstra's shortest paths
 * (1959) over the sixteen nearest directions (a king's and a knight's moves), each step at Tobler's speed for its slope.
 *
 * Knows slopes only: no rivers, cliffs finer than the grid, thickets, fences or private land. A person looks at the map.
 */
import { cellOf, type ElevationGrid, positionOf, sampleAt, stepsM } from './grid.ts';
import type { Position } from './position.ts';
import { stepS } from './walking.ts';

export interface Walks {
  /** Seconds to each cell, NaN where not reached in the time given. */
  readonly timeS: Float32Array;
  /** Metres climbed in all on that way. */
  readonly climbM: Float32Array;
  /** The cell before, -1 at the start. */
  readonly before: Int32Array;
  readonly startCell: number;
}

interface Move {
  readonly down: number;
  readonly right: number;
}

const king: readonly Move[] = [-1, 0, 1]
  .flatMap((down) => [-1, 0, 1].map((right) => ({ down, right })))
  .filter(({ down, right }) => down !== 0 || right !== 0);
const knight: readonly Move[] = [-2, -1, 1, 2]
  .flatMap((down) => [-2, -1, 1, 2].map((right) => ({ down, right })))
  .filter(({ down, right }) => Math.abs(down) !== Math.abs(right));

/** `undefined` where the grid has no ground under the place. */
export function leastTimeWalks(
  grid: ElevationGrid,
  from: Position,
  mostS: number,
  isOnPath = false,
): Walks | undefined {
  const { columns, rows } = grid;
  const cell = cellOf(grid, from);
  const [startRow, startColumn] = [Math.round(cell.row), Math.round(cell.column)];
  if (sampleAt(grid, startRow, startColumn) === undefined) return undefined;
  const startCell = startRow * columns + startColumn;
  const { northM, eastM } = stepsM(grid, from.latitudeDeg);

  const timeS = new Float32Array(columns * rows).fill(Number.NaN);
  const climbM = new Float32Array(columns * rows);
  const before = new Int32Array(columns * rows).fill(-1);
  const isSettled = new Uint8Array(columns * rows);
  const queue = new TimeQueue();
  timeS[startCell] = 0;
  queue.add(startCell, 0);
  for (let next = queue.take(); next; next = queue.take()) {
    const here = next.cell;
    if (isSettled[here]) continue;
    isSettled[here] = 1;
    const row = Math.floor(here / columns);
    const column = here % columns;
    const heightM = sampleAt(grid, row, column) ?? 0;
    for (const move of [...king, ...knight]) {
      const [toRow, toColumn] = [row + move.down, column + move.right];
      const toM = sampleAt(grid, toRow, toColumn);
      if (toM === undefined) continue;
      const there = toRow * columns + toColumn;
      if (isSettled[there]) continue;
      const distanceM = Math.hypot(move.down * northM, move.right * eastM);
      const midM = midwayM(grid, row, column, move, heightM, toM);
      if (midM === undefined) continue;
      const takes =
        stepS(distanceM / 2, midM - heightM, isOnPath) + stepS(distanceM / 2, toM - midM, isOnPath);
      const arrives = next.timeS + takes;
      const known = timeS[there] ?? Number.NaN;
      if (!(arrives <= mostS) || known <= arrives) continue;
      timeS[there] = arrives;
      climbM[there] = (climbM[here] ?? 0) + Math.max(0, midM - heightM) + Math.max(0, toM - midM);
      before[there] = here;
      queue.add(there, arrives);
    }
  }
  return { timeS, climbM, before, startCell };
}

/** Height half-way along a move: between the two cells a knight's move passes between, else on the straight line. */
function midwayM(
  grid: ElevationGrid,
  row: number,
  column: number,
  move: Move,
  fromM: number,
  toM: number,
): number | undefined {
  const isKnight = Math.abs(move.down) === 2 || Math.abs(move.right) === 2;
  if (!isKnight) return (fromM + toM) / 2;
  const [halfDown, halfRight] = [move.down / 2, move.right / 2];
  const one = sampleAt(grid, row + Math.trunc(halfDown), column + Math.trunc(halfRight));
  const other = sampleAt(grid, row + away(halfDown), column + away(halfRight));
  return one === undefined || other === undefined ? undefined : (one + other) / 2;
}

/** Rounded away from zero. */
function away(half: number): number {
  return Math.sign(half) * Math.ceil(Math.abs(half));
}

/** The way to a cell, from the start on. Empty where it was not reached. */
export function wayTo(grid: ElevationGrid, walks: Walks, cell: number): readonly Position[] {
  if (Number.isNaN(walks.timeS[cell] ?? Number.NaN)) return [];
  const way: Position[] = [];
  for (let at = cell; at >= 0; at = walks.before[at] ?? -1)
    way.push(positionOf(grid, Math.floor(at / grid.columns), at % grid.columns));
  return way.reverse();
}

/** Cells by the time of arrival, earliest first: a binary heap. Equal times keep the order of cells, so that the same ground gives the same ways. */
class TimeQueue {
  readonly #items: { readonly cell: number; readonly timeS: number }[] = [];

  add(cell: number, timeS: number): void {
    const items = this.#items;
    let at = items.push({ cell, timeS }) - 1;
    const added = { cell, timeS };
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const above = items[parent];
      if (!above || !isEarlier(added, above)) break;
      items[at] = above;
      at = parent;
    }
    items[at] = added;
  }

  take(): { readonly cell: number; readonly timeS: number } | undefined {
    const items = this.#items;
    const first = items[0];
    const last = items.pop();
    if (!last || items.length === 0) return first;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      const [left, right] = [items[child], items[child + 1]];
      if (!left) break;
      if (right && isEarlier(right, left)) child++;
      const sooner = items[child];
      if (!sooner || !isEarlier(sooner, last)) break;
      items[at] = sooner;
      at = child;
    }
    items[at] = last;
    return first;
  }
}

function isEarlier(
  a: { readonly cell: number; readonly timeS: number },
  b: { readonly cell: number; readonly timeS: number },
): boolean {
  return a.timeS < b.timeS || (a.timeS === b.timeS && a.cell < b.cell);
}
