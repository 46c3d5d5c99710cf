/** The line a finding points at, with carets under the words meant. */
import { type DisplayWidth, isPlain } from './display-width.ts';
import type { Place } from './finding.ts';
import type { SourceText } from './source-text.ts';
import { visibleText } from './visible-text.ts';

export interface CodeFrame {
  /** `   12 | offset: -0.5`, no wider than asked. */
  readonly line: string;
  /** `      |         ` and, apart so that they can be coloured, the carets. */
  readonly margin: string;
  readonly carets: string;
}

/** One thing as the reader sees it (a letter with its accents, an emoji), and where it stands in the line. */
interface Cell {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly width: number;
}

const tabStop = 4;

/** Draws the first line of a place. A long line is cut on either side of the caret, and says so with `…`. */
export function codeFrame(source: SourceText, place: Place, width: number, widthOf: DisplayWidth): CodeFrame {
  const number = String(place.line).padStart(5);
  const gutter = `${number} | `;
  const room = Math.max(20, width - gutter.length);
  const line = source.lineAt(place.line);
  const from = Math.min(place.column - 1, line.length);
  const to = place.endLine === place.line ? Math.min(place.endColumn - 1, line.length) : line.length;

  const cells = cellsNear(line, from, room, widthOf);
  const shown = clip(cells, from, room);
  const cutLeft = (shown[0]?.start ?? 0) > 0;
  const cutRight = (shown.at(-1)?.end ?? line.length) < line.length;
  const before = shown.filter((cell) => cell.end <= from);
  const under = shown.filter((cell) => cell.end > from && cell.start < to);
  const text = `${cutLeft ? '…' : ''}${shown.map((cell) => cell.text).join('')}${cutRight ? '…' : ''}`;
  return {
    line: (gutter + text).trimEnd(),
    margin: `${' '.repeat(number.length)} | ${' '.repeat((cutLeft ? 1 : 0) + totalWidth(before))}`,
    carets: '^'.repeat(Math.max(1, totalWidth(under))),
  };
}

/** Cuts the line into cells, but only within reach of the caret: a line may be megabytes long. */
function cellsNear(line: string, from: number, room: number, widthOf: DisplayWidth): readonly Cell[] {
  const reach = room * 4;
  const begin = from > reach ? from - reach : 0;
  const cells: Cell[] = [];
  let column = 0;
  for (const { segment, index } of graphemes(line.slice(begin, from + reach))) {
    const text = segment === '\t' ? `→${' '.repeat(tabStop - 1 - (column % tabStop))}` : visibleText(segment);
    const width = segment === '\t' ? text.length : widthOf(text);
    cells.push({ text, start: begin + index, end: begin + index + segment.length, width });
    column += width;
  }
  return cells;
}

function graphemes(text: string): Iterable<{ readonly segment: string; readonly index: number }> {
  // The segmenter takes several milliseconds to make, and plain text needs none.
  if (isPlain(text)) return [...text].map((segment, index) => ({ segment, index }));
  // Graphemes are the same in every locale; the argument is only what the constructor asks for.
  return new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text);
}

/** The cells that fit into the room, the caret about a third of the way in; room is kept for the two `…`. */
function clip(cells: readonly Cell[], from: number, room: number): readonly Cell[] {
  const caretAt = cells.findIndex((cell) => cell.end > from);
  // A caret behind the last letter needs a column of its own.
  if (totalWidth(cells) + (caretAt === -1 ? 1 : 0) <= room) return cells;
  const inside = room - 2;
  let first = caretAt === -1 ? cells.length : caretAt;
  // Near the end of the line the text before the caret may use the room that the end does not need.
  const leftRoom = Math.max(inside / 3, inside - totalWidth(cells.slice(first)));
  let left = cells[first - 1]?.width ?? 0;
  while (first > 0 && left <= leftRoom) {
    first -= 1;
    left += cells[first - 1]?.width ?? 0;
  }
  let used = 0;
  const kept: Cell[] = [];
  for (const cell of cells.slice(first)) {
    if (used + cell.width > inside) break;
    used += cell.width;
    kept.push(cell);
  }
  return kept;
}

function totalWidth(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.width, 0);
}
