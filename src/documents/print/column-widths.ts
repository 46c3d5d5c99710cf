/**
 * How wide the columns of a table are: as wide as their widest cell while there is room; else the widest give
 * way first, down to their longest word; on sheets of text long words are broken before a table is too wide. Figures
 * are never broken, and their decimal points stand in line.
 */
import type { Cell, Row, Table } from './content.ts';
import { noteTooWide, plainText } from './lay-text.ts';
import { pointsPerMm, type Setting } from './slab.ts';
import { type WordWidths, widthsOf } from './wrap.ts';

/** A cell with the column and row it begins in. */
/** Whether all words of a cell are set in strong type. */
export function isStrong({ heading, plain }: Cell): boolean {
  return heading && plain !== true;
}

export interface Placed {
  readonly cell: Cell;
  readonly column: number;
  readonly row: number;
}

export function placeCells(rows: readonly Row[]): Placed[] {
  const placed: Placed[] = [];
  const taken = new Set<string>();
  rows.forEach((row, index) => {
    let column = 0;
    for (const cell of row.cells) {
      while (taken.has(`${index} ${column}`)) column += 1;
      placed.push({ cell, column, row: index });
      if (cell.rows > 1)
        for (let down = 1; down < cell.rows; down += 1)
          for (let right = 0; right < cell.span; right += 1) taken.add(`${index + down} ${column + right}`);
      column += cell.span;
    }
  });
  return placed;
}

export function columnWidths(
  table: Table,
  cells: readonly Placed[],
  widthPt: number,
  sizePt: number,
  padX: number,
  setting: Setting,
): number[] {
  const points = decimalPoints(
    table,
    cells.filter((placed) => !placed.cell.heading),
    sizePt,
    setting,
  );
  /** What each column needs if all its words are as wide as this says. */
  const need = (how: keyof WordWidths, mostPt = Number.POSITIVE_INFINITY): number[] => {
    const wordsOf = (cell: Cell, column = -1) => {
      const words = widthsOf(cell.text, sizePt, setting, isStrong(cell));
      // A stated width gives way to a word, and never to a line.
      return table.columns[column]?.widthMm === undefined ? words[how] : Math.min(words[how], words.least);
    };
    const widths = table.columns.map(() => 0);
    for (const { cell, column } of cells)
      if (cell.span === 1) widths[column] = Math.max(widths[column] ?? 0, wordsOf(cell, column) + 2 * padX);
    table.columns.forEach((column, index) => {
      const point = points[index];
      const own = widths[index] ?? 0;
      if (column.widthMm !== undefined) widths[index] = Math.max(own, column.widthMm * pointsPerMm);
      else if (column.align === 'decimal' && point !== undefined)
        widths[index] = Math.max(own, point.before + point.after + 2 * padX);
    });
    widen(table, cells, widths, padX, (cell) => wordsOf(cell), mostPt);
    return widths;
  };
  // A long text over several columns would rather be broken than take room from the columns beside it.
  const natural = need('natural', widthPt);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const spare = widthPt - sum(natural);
  if (spare >= 0) {
    const shares = sum(table.columns.map((column) => column.share));
    return natural.map(
      (width, index) => width + (shares === 0 ? 0 : (spare * (table.columns[index]?.share ?? 0)) / shares),
    );
  }
  let wider = natural;
  for (const how of setting.hyphenates === true
    ? (['least', 'atHyphens', 'broken'] as const)
    : (['least'] as const)) {
    const least = need(how);
    if (sum(least) <= widthPt + 0.01) return levelled(wider, least, widthPt);
    wider = least;
  }
  // Where words may be broken the cells that are still too wide say so, each with its words.
  if (setting.hyphenates === true)
    return levelled(
      wider,
      wider.map(() => 0),
      widthPt,
    );
  noteTooWide(setting, `the table ${name(table)}`, sum(wider), widthPt);
  return wider.map((width) => (width * widthPt) / sum(wider));
}

/** The widest columns give way first, to one width, so that a short name beside a long text stays whole. */
function levelled(natural: readonly number[], least: readonly number[], widthPt: number): number[] {
  const at = (level: number): number[] =>
    natural.map((width, index) => Math.min(width, Math.max(least[index] ?? 0, level)));
  let [low, high] = [0, Math.max(...natural)];
  for (let turn = 0; turn < 40; turn += 1) {
    const middle = (low + high) / 2;
    if (at(middle).reduce((sum, width) => sum + width, 0) <= widthPt) low = middle;
    else high = middle;
  }
  return at(low);
}

/** Where a cell needs more than the columns it spans have, those with a share grow by their shares; without any, all alike. */
function widen(
  table: Table,
  cells: readonly Placed[],
  widths: number[],
  padX: number,
  need: (cell: Cell) => number,
  mostPt: number,
): void {
  for (const { cell, column } of cells) {
    if (cell.span === 1) continue;
    const spanned = table.columns.slice(column, column + cell.span);
    const have = widths.slice(column, column + cell.span).reduce((sum, width) => sum + width, 0);
    const sum = widths.reduce((total, width) => total + width, 0);
    const lack = Math.min(need(cell) + 2 * padX - have, mostPt - sum);
    if (lack <= 0) continue;
    const shares = spanned.reduce((sum, one) => sum + one.share, 0);
    spanned.forEach((one, index) => {
      widths[column + index] =
        (widths[column + index] ?? 0) + (shares === 0 ? lack / cell.span : (lack * one.share) / shares);
    });
  }
}

/** What a message calls a table: its caption or, where that is empty, what stands in its first cell. */
export function name(table: Table): string {
  const first =
    plainText(table.caption).trim() !== ''
      ? table.caption
      : (table.head[0]?.cells[0]?.text ?? table.body[0]?.cells[0]?.text ?? []);
  return `"${plainText(first).slice(0, 40)}"`;
}

export function decimalPoints(
  table: Table,
  cells: readonly Placed[],
  sizePt: number,
  setting: Setting,
): { before: number; after: number }[] {
  const points = table.columns.map(() => ({ before: 0, after: 0 }));
  for (const { cell, column } of cells) {
    const point = points[column];
    if (
      table.columns[column]?.align !== 'decimal' ||
      point === undefined ||
      cell.heading ||
      cell.align !== undefined
    )
      continue;
    const part = pointOf(cell, sizePt, setting);
    point.before = Math.max(point.before, part.before);
    point.after = Math.max(point.after, part.after);
  }
  return points;
}

/** The widths before and from the decimal point of the first figure of a cell; a whole number has its point at its end. */
export function pointOf(
  cell: Cell,
  sizePt: number,
  setting: Setting,
): { readonly before: number; readonly after: number } {
  const all = widthsOf(cell.text, sizePt, setting).natural;
  const before: (typeof cell.text)[number][] = [];
  for (const item of cell.text) {
    const at =
      item.kind === 'text'
        ? (/\.\d/.exec(item.text)?.index ?? /(?<=\d)(?!\d)/.exec(item.text)?.index ?? -1)
        : -1;
    if (item.kind === 'text' && at >= 0) {
      before.push({ ...item, text: item.text.slice(0, at) });
      const wide = widthsOf(before, sizePt, setting).natural;
      return { before: wide, after: Math.max(0, all - wide) };
    }
    before.push(item);
  }
  return { before: all, after: 0 };
}
