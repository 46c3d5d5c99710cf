/** A table: the widths of its columns, then each row as a slab that carries the head along. */
import {
  columnWidths,
  decimalPoints,
  isStrong,
  name,
  type Placed,
  placeCells,
  pointOf,
} from './column-widths.ts';
import type { Align, Row, Table } from './content.ts';
import { layText, placeLine, sizeOf, stack } from './lay-text.ts';
import type { Item } from './page.ts';
import { type Part, shifted } from './set-down.ts';
import { addNode, heightOf, inLanguage, pointsPerMm, type Setting, type Slab } from './slab.ts';
import { wrap } from './wrap.ts';

export function layTable(
  table: Table,
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab[] {
  const sizePt = sizeOf(table.size, setting);
  const padX = setting.cellPadEm * sizePt;
  const padY = table.lines === 'none' ? 0 : setting.gapEm * 0.25 * sizePt;
  const node = addNode(setting, table.contents ? 'TOC' : 'Table', parent);
  const caption =
    table.caption.length === 0
      ? []
      : layText(table.caption, widthPt, sizePt, setting, {
          node: addNode(setting, 'Caption', node),
          strong: true,
          what: 'the caption',
        });
  const head = placeCells(table.head);
  const body = placeCells(table.body);
  const widths = columnWidths(table, [...head, ...body], widthPt, sizePt, padX, setting);
  const points = decimalPoints(table, body, sizePt, setting);
  const what = `a cell of the table ${name(table)},`;
  const grid: Grid = { table, what, widths, points, sizePt, padX, padY, setting };
  const part = (role: 'THead' | 'TBody', rows: readonly Row[], cells: readonly Placed[]): Slab[] =>
    rows.length === 0 ? [] : layRows(grid, rows, cells, table.contents ? node : addNode(setting, role, node));
  const headSlabs = part('THead', table.head, head).map((slab): Slab => ({ ...slab, breakBelow: false }));
  const bodySlabs = part('TBody', table.body, body);
  const again = headSlabs.map(
    (slab): Slab => ({ ...slab, parts: [{ ...shifted(slab.parts, 0, 0), again: true }] }),
  );
  const topLine: Slab[] = table.lines === 'none' ? [] : [ruleSlab(widths, table.head.length > 0 ? 0.8 : 0.4)];
  const repeated = again.length === 0 ? topLine : [...topLine, ...again];
  return [
    ...caption.map((slab): Slab => ({ ...slab, breakBelow: false })),
    ...topLine,
    ...headSlabs,
    ...withoutStrays(bodySlabs).map((slab): Slab => ({ ...slab, head: repeated })),
  ];
}

/** A table of so many rows is read at a glance and stays whole, if it is no higher than this. */
const glanceRows = 6;
const glancePt = 70 * pointsPerMm;

/** Rows between which no page ends: all of a small table, else the first two, the last two and two under each heading. */
function withoutStrays(rows: readonly Slab[]): readonly Slab[] {
  const isSmall = rows.length <= glanceRows && heightOf(rows) <= glancePt;
  return rows.map((row, index): Slab => {
    const isLast = index === rows.length - 1;
    const isFollowed = index === 0 || index === rows.length - 2 || rows[index - 1]?.breakBelow === false;
    // The row before a heading row is the last of its group: a page may end there.
    const endsGroup = rows[index + 1]?.breakBelow === false && index !== 0;
    return !isLast && (isSmall || (isFollowed && !endsGroup)) ? { ...row, breakBelow: false } : row;
  });
}

interface Grid {
  readonly table: Table;
  /** What a message calls a cell of it. */
  readonly what: string;
  readonly widths: readonly number[];
  /** For each decimal column, the widest part before the point. */
  readonly points: readonly { readonly before: number; readonly after: number }[];
  readonly sizePt: number;
  readonly padX: number;
  readonly padY: number;
  readonly setting: Setting;
}

function ruleSlab(widths: readonly number[], widthPt: number): Slab {
  const wide = widths.reduce((sum, width) => sum + width, 0);
  return {
    kind: 'slab',
    heightPt: 0,
    parts: [
      {
        kind: 'line',
        points: [
          [0, 0],
          [wide, 0],
        ],
        widthPt,
      },
    ],
    breakBelow: false,
  };
}

function layRows(
  grid: Grid,
  rows: readonly Row[],
  cells: readonly Placed[],
  parent: number | undefined,
): Slab[] {
  const { setting, sizePt, padX, padY, widths, table } = grid;
  const lefts: number[] = [0];
  for (const width of widths) lefts.push((lefts.at(-1) ?? 0) + width);
  const whole = lefts.at(-1) ?? 0;
  const byRow: Placed[][] = rows.map(() => []);
  for (const placed of cells) byRow[placed.row]?.push(placed);

  const laid = rows.map((_, row) => {
    const rowNode = addNode(setting, table.contents ? 'TOCI' : 'TR', parent);
    return (byRow[row] ?? []).map((placed) => {
      const { cell, column } = placed;
      const left = lefts[column] ?? 0;
      const inner = (lefts[column + cell.span] ?? whole) - left - 2 * padX;
      const isHead = table.head === rows;
      const role = cell.heading ? 'TH' : 'TD';
      const node = addNode(setting, table.contents ? 'P' : role, rowNode, {
        ...inLanguage(cell),
        ...(cell.heading ? { scope: isHead ? ('Column' as const) : ('Row' as const) } : {}),
        ...(cell.span > 1 ? { colSpan: cell.span } : {}),
        ...(cell.rows > 1 ? { rowSpan: cell.rows } : {}),
      });
      return { placed, ...stack(layCell(grid, placed, inner, node), left + padX, padY) };
    });
  });

  const heights = rows.map((row, index) => {
    const own = (laid[index] ?? [])
      .filter(({ placed }) => placed.cell.rows === 1)
      .map(({ heightPt }) => heightPt + 2 * padY);
    return (
      (row.airMm ?? 0) * pointsPerMm +
      Math.max((row.heightMm ?? 0) * pointsPerMm, sizePt * setting.leading + 2 * padY, ...own)
    );
  });
  for (const one of laid.flat()) {
    const { row, cell } = one.placed;
    const have = heights.slice(row, row + cell.rows).reduce((sum, height) => sum + height, 0);
    const last = row + cell.rows - 1;
    heights[last] = (heights[last] ?? 0) + Math.max(0, one.heightPt + 2 * padY - have);
  }

  /** Cells of rows above that reach into this one. */
  let hanging: readonly Placed[] = [];
  return rows.map((row, index): Slab => {
    const heightPt = heights[index] ?? 0;
    const parts: Part[] = [];
    for (const one of laid[index] ?? []) {
      // In a row made high for the pen the words stand at its middle.
      const air = (row.airMm ?? 0) * pointsPerMm;
      const dy =
        air +
        (row.heightMm === undefined || one.placed.cell.rows > 1
          ? 0
          : (heightPt - air - 2 * padY - one.heightPt) / 2);
      if (dy === 0) parts.push(...one.parts);
      else parts.push(shifted(one.parts, 0, dy));
    }
    const present = [...hanging, ...(byRow[index] ?? [])];
    const openBelow = present.filter(({ row: from, cell }) => index < from + cell.rows - 1);
    hanging = openBelow;
    if (table.lines !== 'none')
      parts.push(
        ...rowLines(
          grid,
          lefts,
          heightPt,
          openBelow,
          present,
          table.head === rows && index === rows.length - 1,
        ),
      );
    // A row that is one heading names those below it, and is not left alone at the foot of a page.
    const [only] = row.cells;
    const names = only?.heading === true && only.span === table.columns.length && index < rows.length - 1;
    return { kind: 'slab', heightPt, parts, breakBelow: openBelow.length === 0 && !names };
  });
}

function layCell(grid: Grid, { cell, column }: Placed, inner: number, node: number): Slab[] {
  const { setting, sizePt, table, points } = grid;
  const wanted = cell.align ?? table.columns[column]?.align ?? 'start';
  const align: Align = wanted === 'decimal' ? 'end' : wanted;
  const point = points[column];
  if (wanted === 'decimal' && !cell.heading && cell.span === 1 && point !== undefined) {
    const { lines } = wrap(cell.text, inner, sizePt, setting, { node });
    const [only] = lines;
    if (lines.length === 1 && only !== undefined) {
      // The column of figures stands as a block at the end of its room.
      const dx = inner - point.before - point.after + point.before - pointOf(cell, sizePt, setting).before;
      const parts = [shifted([placeLine(only, inner, setting, 'start')], dx, 0)];
      return [{ kind: 'slab', heightPt: sizePt * setting.leading, parts, breakBelow: true }];
    }
  }
  return layText(cell.text, inner, sizePt, setting, {
    node,
    align,
    strong: isStrong(cell),
    what: grid.what,
  });
}

/** The lines under a row, left out where a cell goes on below, and between its cells. */
function rowLines(
  grid: Grid,
  lefts: readonly number[],
  heightPt: number,
  openBelow: readonly Placed[],
  present: readonly Placed[],
  underHead: boolean,
): Item[] {
  const items: Item[] = [];
  const whole = lefts.at(-1) ?? 0;
  const widthPt = underHead ? 0.8 : 0.3;
  const closed = grid.widths.map(
    (_, column) =>
      !openBelow.some((placed) => placed.column <= column && column < placed.column + placed.cell.span),
  );
  for (let from = 0; from < closed.length; from += 1) {
    if (closed[from] !== true) continue;
    let to = from;
    while (closed[to + 1] === true) to += 1;
    items.push({
      kind: 'line',
      points: [
        [lefts[from] ?? 0, heightPt],
        [lefts[to + 1] ?? whole, heightPt],
      ],
      widthPt,
    });
    from = to;
  }
  if (grid.table.lines === 'all')
    for (const x of [0, ...present.map((placed) => lefts[placed.column + placed.cell.span] ?? whole)])
      items.push({
        kind: 'line',
        points: [
          [x, 0],
          [x, heightPt],
        ],
        widthPt: 0.3,
      });
  return items;
}
