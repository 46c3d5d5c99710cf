/**
 * What the elements of the markup mean: elements → content. Strict: an element, an attribute or a text in
 * a place where the markup has none is refused by name, with the line of the template it came from.
 */
import type {
  Align,
  Block,
  Card,
  CardSize,
  Cell,
  Column,
  Content,
  Flip,
  Inline,
  MarkShape,
  PaperName,
  Row,
  Scene,
  TextSize,
} from './content.ts';
import { type Element, parseMarkup, refuseMarkup } from './parse-markup.ts';

/** Figures by name; `<figure name="…"/>` places one. They are drawn in code, because a template computes nothing. */
export type Figures = ReadonlyMap<string, Scene>;

const papers: readonly PaperName[] = ['A4', 'Letter'];
const sizes: readonly TextSize[] = ['normal', 'small', 'large', 'huge'];
const aligns: readonly Align[] = ['start', 'center', 'end'];
const shapes: readonly MarkShape[] = [
  'dot',
  'ring',
  'square',
  'diamond',
  'triangle',
  'cross',
  'bar',
  'arrow',
];
const cardSizes: readonly CardSize[] = ['id-1', 'index', 'a7', 'a6', 'fold'];
const flips: readonly Flip[] = ['long-edge', 'short-edge'];
const inlineNames = ['b', 'code', 'num', 'tick', 'blank', 'mark', 'br', 'page-of'];
const blockNames = [
  'section',
  'heading',
  'p',
  'list',
  'table',
  'figure',
  'columns',
  'keep',
  'panel',
  'space',
  'rule',
  'new-page',
];

/** @throws Refusal naming file and line */
export function readContent(markup: string, figures: Figures = new Map(), file = 'markup'): Content {
  const root = parseMarkup(markup, file);
  if (root.name === 'document') return readDocument(root, figures);
  if (root.name === 'cards') return readCards(root, figures);
  throw refuseMarkup(root.at, `<${root.name}> is neither <document> nor <cards>.`);
}

function readDocument(element: Element, figures: Figures): Content {
  allow(element, ['title', 'language', 'paper', 'size']);
  const head = one(element, 'running-head');
  const foot = one(element, 'running-foot');
  const rest = element.children.filter((child) => child !== head && child !== foot);
  return {
    kind: 'document',
    ...named(element),
    sizePt: number(element, 'size', 10),
    head: head === undefined ? [] : runningText(head),
    foot: foot === undefined ? [] : runningText(foot),
    blocks: readBlocks({ ...element, children: rest }, figures),
  };
}

function readCards(element: Element, figures: Figures): Content {
  allow(element, ['title', 'language', 'paper', 'card', 'flip', 'from', 'to']);
  const note = one(element, 'note');
  const cards: Card[] = [];
  for (const child of elementsOf(element, ['card', 'note'])) {
    if (child.name === 'note') continue;
    allow(child, ['id']);
    const sides = elementsOf(child, ['front', 'back']);
    if (sides.map((side) => side.name).join() !== 'front,back')
      throw refuseMarkup(child.at, '<card> holds one <front> and then one <back>.');
    const [front, back] = sides.map((side) => {
      allow(side, []);
      return readBlocks(side, figures);
    });
    cards.push({ id: required(child, 'id'), front: front ?? [], back: back ?? [] });
  }
  const fromPt = number(element, 'from', 10);
  const toPt = number(element, 'to', 8);
  if (toPt > fromPt)
    throw refuseMarkup(
      element.at,
      `The sizes go from ${fromPt} down to ${toPt} pt; the first must be the larger.`,
    );
  return {
    kind: 'cards',
    ...named(element),
    cardSize: choice(element, 'card', cardSizes),
    flip: choice(element, 'flip', flips),
    fromPt,
    toPt,
    note: note === undefined ? [] : readInline(note),
    cards,
  };
}

function named(element: Element): { title: string; language: string; paper: PaperName } {
  return {
    title: required(element, 'title'),
    language: required(element, 'language'),
    paper: choice(element, 'paper', papers),
  };
}

function readBlocks(element: Element, figures: Figures): Block[] {
  return elementsOf(element, blockNames).map((child) => readBlock(child, figures));
}

function readBlock(element: Element, figures: Figures): Block {
  switch (element.name) {
    case 'section': {
      allow(element, ['id', 'new-page']);
      return {
        kind: 'section',
        ...identity(element),
        newPage: yes(element, 'new-page'),
        blocks: readBlocks(element, figures),
      };
    }
    case 'heading': {
      allow(element, ['level', 'id']);
      const level = number(element, 'level', 2);
      if (level !== 1 && level !== 2 && level !== 3 && level !== 4)
        throw refuseMarkup(element.at, `A heading has level 1 to 4, not ${level}.`);
      return { kind: 'heading', level, text: readInline(element), ...identity(element) };
    }
    case 'p': {
      allow(element, ['size', 'align']);
      return {
        kind: 'paragraph',
        text: readInline(element),
        size: choice(element, 'size', sizes, 'normal'),
        align: choice(element, 'align', aligns, 'start'),
      };
    }
    case 'list': {
      allow(element, ['ordered']);
      const items = elementsOf(element, ['item']).map((item) => {
        allow(item, []);
        return readItem(item, figures);
      });
      return { kind: 'list', ordered: yes(element, 'ordered'), items };
    }
    case 'table':
      return readTable(element);
    case 'figure': {
      allow(element, ['name']);
      const scene = figures.get(required(element, 'name'));
      if (scene === undefined)
        throw refuseMarkup(element.at, `There is no figure "${element.attributes.get('name')}".`);
      return { kind: 'figure', scene, caption: readInline(element) };
    }
    case 'columns': {
      allow(element, []);
      const columns = elementsOf(element, ['column']);
      for (const column of columns) allow(column, ['share']);
      if (columns.length === 0) throw refuseMarkup(element.at, '<columns> holds at least one <column>.');
      return {
        kind: 'columns',
        shares: columns.map((column) => positive(column, 'share', 1)),
        columns: columns.map((column) => readBlocks(column, figures)),
      };
    }
    case 'keep':
    case 'panel':
      allow(element, []);
      return { kind: element.name, blocks: readBlocks(element, figures) };
    case 'space':
      allow(element, ['mm']);
      empty(element);
      return { kind: 'space', heightMm: positive(element, 'mm') };
    default:
      allow(element, []);
      empty(element);
      return { kind: element.name === 'rule' ? 'rule' : 'new-page' };
  }
}

/** An item of words alone is one paragraph; an item of blocks is those blocks. */
function readItem(item: Element, figures: Figures): Block[] {
  const holdsBlocks = item.children.some(
    (child) => typeof child !== 'string' && blockNames.includes(child.name),
  );
  if (holdsBlocks) return readBlocks(item, figures);
  return [{ kind: 'paragraph', text: readInline(item), size: 'normal', align: 'start' }];
}

function readTable(element: Element): Block {
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
  const caption = element.attributes.get('caption');
  return {
    kind: 'table',
    caption: caption === undefined ? [] : [text(caption, { strong: false, code: false, whole: false })],
    columns,
    head,
    body,
    lines: choice(element, 'lines', ['rows', 'all', 'none'] as const, 'rows'),
    size: choice(element, 'size', sizes, 'normal'),
  };
}

function readRow(row: Element, isHead: boolean): Row {
  allow(row, ['mm']);
  const cells = elementsOf(row, ['cell']).map((cell): Cell => {
    allow(cell, ['span', 'rows', 'heading', 'align']);
    const align = cell.attributes.has('align') ? choice(cell, 'align', aligns) : undefined;
    return {
      text: readInline(cell),
      span: whole(cell, 'span'),
      rows: whole(cell, 'rows'),
      heading: isHead || yes(cell, 'heading'),
      ...(align === undefined ? {} : { align }),
    };
  });
  return { cells, ...(row.attributes.has('mm') ? { heightMm: positive(row, 'mm') } : {}) };
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

function runningText(element: Element): Inline[] {
  allow(element, []);
  return readInline(element, ['page', 'pages']);
}

interface Look {
  readonly strong: boolean;
  readonly code: boolean;
  readonly whole: boolean;
}

function text(value: string, look: Look): Inline {
  return { kind: 'text', text: value, ...look };
}

function readInline(element: Element, also: readonly string[] = []): Inline[] {
  const found: Inline[] = [];
  const walk = (parent: Element, look: Look): void => {
    for (const child of parent.children) {
      if (typeof child === 'string') {
        const words = child.replace(/[ \t\r\n]+/g, ' ');
        if (words !== '') found.push(text(words, look));
        continue;
      }
      if (!inlineNames.includes(child.name) && !also.includes(child.name))
        throw unknown(child, element.name, [...inlineNames, ...also]);
      if (child.name === 'b' || child.name === 'code' || child.name === 'num') {
        allow(child, []);
        walk(child, {
          strong: look.strong || child.name === 'b',
          code: look.code || child.name === 'code',
          whole: look.whole || child.name !== 'b',
        });
        continue;
      }
      empty(child);
      if (child.name === 'blank') {
        allow(child, ['mm']);
        found.push({ kind: 'blank', widthMm: positive(child, 'mm') });
      } else if (child.name === 'mark') {
        allow(child, ['shape', 'says']);
        found.push({ kind: 'mark', shape: choice(child, 'shape', shapes), says: required(child, 'says') });
      } else if (child.name === 'page-of') {
        allow(child, ['id']);
        found.push({ kind: 'page-of', id: required(child, 'id') });
      } else {
        allow(child, []);
        found.push({
          kind:
            child.name === 'tick'
              ? 'tick'
              : child.name === 'br'
                ? 'break'
                : child.name === 'page'
                  ? 'page'
                  : 'pages',
        });
      }
    }
  };
  walk(element, { strong: false, code: false, whole: false });
  return trimmed(found);
}

/** Blanks at the two ends and doubled blanks between runs go; they come from the lines of the template. */
function trimmed(inline: readonly Inline[]): Inline[] {
  const kept: Inline[] = [];
  let afterBlank = true;
  for (const item of inline) {
    if (item.kind !== 'text') {
      kept.push(item);
      afterBlank = item.kind === 'break';
      continue;
    }
    const words = afterBlank ? item.text.replace(/^ +/, '') : item.text;
    if (words === '') continue;
    kept.push({ ...item, text: words });
    afterBlank = words.endsWith(' ');
  }
  for (let last = kept.at(-1); last?.kind === 'text' && last.text.endsWith(' '); last = kept.at(-1)) {
    kept.pop();
    const words = last.text.replace(/ +$/, '');
    if (words !== '') kept.push({ ...last, text: words });
  }
  return kept;
}

function elementsOf(element: Element, names: readonly string[]): Element[] {
  const found: Element[] = [];
  for (const child of element.children) {
    if (typeof child !== 'string') {
      if (!names.includes(child.name)) throw unknown(child, element.name, names);
      found.push(child);
    } else if (child.trim() !== '')
      throw refuseMarkup(
        element.at,
        `The text "${child.trim().slice(0, 30)}" stands in <${element.name}>, which holds only ${names.map((name) => `<${name}>`).join(', ')}.`,
      );
  }
  return found;
}

function unknown(child: Element, parent: string, names: readonly string[]): Error {
  return refuseMarkup(
    child.at,
    `<${child.name}> has no place in <${parent}>, which holds ${names.map((name) => `<${name}>`).join(', ')}.`,
  );
}

function one(element: Element, name: string): Element | undefined {
  const found = element.children.filter(
    (child): child is Element => typeof child !== 'string' && child.name === name,
  );
  const second = found[1];
  if (second !== undefined) throw refuseMarkup(second.at, `<${element.name}> has a second <${name}>.`);
  return found[0];
}

function allow(element: Element, names: readonly string[]): void {
  for (const key of element.attributes.keys())
    if (!names.includes(key))
      throw refuseMarkup(
        element.at,
        `<${element.name}> has no attribute ${key}${names.length === 0 ? '' : `; it has ${names.join(', ')}`}.`,
      );
}

function empty(element: Element): void {
  if (element.children.some((child) => typeof child !== 'string' || child.trim() !== ''))
    throw refuseMarkup(element.at, `<${element.name}/> holds nothing.`);
}

function required(element: Element, key: string): string {
  const value = element.attributes.get(key);
  if (value === undefined || value.trim() === '')
    throw refuseMarkup(element.at, `<${element.name}> needs the attribute ${key}.`);
  return value;
}

function choice<T extends string>(element: Element, key: string, values: readonly T[], otherwise?: T): T {
  const value = element.attributes.get(key) ?? otherwise;
  const found = values.find((candidate) => candidate === value);
  if (found === undefined)
    throw refuseMarkup(
      element.at,
      `${key} of <${element.name}> is "${value ?? ''}"; it can be ${values.join(', ')}.`,
    );
  return found;
}

function yes(element: Element, key: string): boolean {
  return choice(element, key, ['no', 'yes'] as const, 'no') === 'yes';
}

function number(element: Element, key: string, otherwise?: number): number {
  const value = element.attributes.get(key);
  if (value === undefined && otherwise !== undefined) return otherwise;
  if (value === undefined || !/^\d+(\.\d+)?$/.test(value))
    throw refuseMarkup(element.at, `${key} of <${element.name}> is "${value ?? ''}"; a number is meant.`);
  return Number(value);
}

function positive(element: Element, key: string, otherwise?: number): number {
  const value = number(element, key, otherwise);
  if (value <= 0) throw refuseMarkup(element.at, `${key} of <${element.name}> must be above 0.`);
  return value;
}

function whole(element: Element, key: string): number {
  const value = number(element, key, 1);
  if (!Number.isInteger(value) || value < 1)
    throw refuseMarkup(element.at, `${key} of <${element.name}> is a whole number from 1.`);
  return value;
}

function identity(element: Element): { id?: string } {
  return element.attributes.has('id') ? { id: required(element, 'id') } : {};
}
