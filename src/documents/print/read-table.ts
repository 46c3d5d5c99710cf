/** Tables of the markup: columns first, then the head, then rows that fill the columns exactly. */
import type { Cell, Column, Row, Table } from './content.ts';
import { type Element, refuseMarkup } from './parse-markup.ts';
import {
  aligns,
  allow,
  choice,
  elementsOf,
  empty,
  languageOf,
  number,
  positive,
  sizes,
  whole,
} from './read-element.ts';
import { readInline, text } from './read-inline.ts';

export function readTable(element: Element): Table {
  allow(element, ['caption', 'lines', 'size']);
  const columns: Column[] = [];
  const head: Row[] = [];
  const body: Row[] = [];
  for (const child of elementsOf(element, ['column', 'head', 'row'])) {
    if (child.name === 'column') {
      allow(child, ['align', 'share', 'mm']);
      empty(child);
      const widthMm = child.attributes.has('mm') ? positive(child, 'mm') : undefined;
      columns.push({
        align: choice(child, 'align', [...aligns, 'decimal'] as const, 'start'),
        share: number(child, 'share', 0),
        ...(widthMm === undefined ? {} : { widthMm }),
      });
    } else if (child.name === 'head') {
      allow(child, []);
      for (const row of elementsOf(child, ['row'])) head.push(readRow(row, true));
    } else body.push(readRow(child, false));
  }
  if (columns.length === 0)
    throw refuseMarkup(element.at, '<table> begins with one <column/> for each column.');
  checkGrid(element, [head, body], columns.length);
  const caption = element.attributes.get('caption') ?? '';
  return {
    kind: 'table',
    caption: caption === '' ? [] : [text(caption, { strong: false, code: false, whole: false })],
    columns,
    head,
    body,
    lines: choice(element, 'lines', ['rows', 'all', 'none'] as const, 'rows'),
    size: choice(element, 'size', sizes, 'normal'),
  };
}

function readRow(row: Element, isHead: boolean): Row {
  allow(row, ['mm', 'air']);
  const cells = elementsOf(row, ['cell']).map((cell): Cell => {
    allow(cell, ['span', 'rows', 'heading', 'align', 'language']);
    const heading = choice(cell, 'heading', ['yes', 'plain', 'no'] as const, 'no');
    const align = cell.attributes.has('align') ? choice(cell, 'align', aligns) : undefined;
    return {
      ...languageOf(cell),
      text: readInline(cell),
      span: whole(cell, 'span'),
      rows: whole(cell, 'rows'),
      heading: isHead || heading !== 'no',
      ...(heading === 'plain' && { plain: true as const }),
      ...(align === undefined ? {} : { align }),
    };
  });
  return {
    cells,
    ...(row.attributes.has('mm') ? { heightMm: positive(row, 'mm') } : {}),
    ...(row.attributes.has('air') ? { airMm: positive(row, 'air') } : {}),
  };
}

/** Every row, with what spans into it from above, fills the table's columns exactly. */
function checkGrid(table: Element, parts: readonly (readonly Row[])[], columns: number): void {
  for (const rows of parts) {
    let hanging: { span: number; left: number }[] = [];
    rows.forEach((row, index) => {
      const filled = [...row.cells, ...hanging].reduce((sum, cell) => sum + cell.span, 0);
      if (filled !== columns)
        throw refuseMarkup(
          table.at,
          `Row ${index + 1} of <table> fills ${filled} of its ${columns} columns.`,
        );
      hanging = [
        ...hanging.map((cell) => ({ span: cell.span, left: cell.left - 1 })),
        ...row.cells.map((cell) => ({ span: cell.span, left: cell.rows - 1 })),
      ].filter((cell) => cell.left > 0);
    });
    if (hanging.length > 0) throw refuseMarkup(table.at, 'A cell of <table> spans more rows than there are.');
  }
}
