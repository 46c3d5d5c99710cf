/** Rows of a table by the megahertz they touch, so that each of thousands of channels need not ask every row. */
import type { Span } from './country.ts';

const pieceHz = 1_000_000;

/** For each table, what was found in the pieces of spectrum that were asked for. */
const known = new WeakMap<readonly Span[], Map<number, readonly Span[]>>();

/**
 * All rows of a table that a stretch could touch, in the table's order, and perhaps rows beside it: each is still to
 * be asked. What is remembered hangs on the table itself, which must not change.
 */
export function nearby<Row extends Span>(
  table: readonly Row[],
  fromHz: number,
  toHz = fromHz,
): readonly Row[] {
  const piece = Math.floor(fromHz / pieceHz);
  if (Math.floor(toHz / pieceHz) !== piece) return table;
  let pieces = known.get(table) as Map<number, readonly Row[]> | undefined;
  if (!pieces) {
    pieces = new Map();
    known.set(table, pieces);
  }
  let rows = pieces.get(piece);
  if (!rows) {
    const [first, end] = [piece * pieceHz, (piece + 1) * pieceHz];
    rows = table.filter((row) => row.fromHz <= end && row.toHz >= first);
    pieces.set(piece, rows);
  }
  return rows;
}
