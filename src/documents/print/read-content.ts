/**
 * What the elements of the markup mean: elements → content. Strict: an element, an attribute or a text in
 * a place where the markup has none is refused by name, with the line of the template it came from.
 */
import type { Block, Card, CardSize, Content, Flip, PaperName, Scene } from './content.ts';
import { type Element, parseMarkup, refuseMarkup } from './parse-markup.ts';
import {
  aligns,
  allow,
  choice,
  elementsOf,
  empty,
  identity,
  languageOf,
  number,
  one,
  positive,
  required,
  sizes,
  yes,
} from './read-element.ts';
import { readInline, runningText } from './read-inline.ts';
import { readTable } from './read-table.ts';
import { withContents } from './with-contents.ts';

/** Figures by name; `<figure name="…"/>` places one. They are drawn in code, because a template computes nothing. */
export type Figures = ReadonlyMap<string, Scene>;

const papers: readonly PaperName[] = ['A4', 'Letter'];
const cardSizes: readonly CardSize[] = ['id-1', 'index', 'a7', 'a6', 'fold'];
const flips: readonly Flip[] = ['long-edge', 'short-edge'];
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
  'fill',
  'rule',
  'new-page',
  'contents',
];

/** What a document is read with. */
interface Reading {
  readonly figures: Figures;
  /** Elements already read: what stands in the markup twice is one element, and one block. */
  readonly blocks: Map<Element, Block>;
  readonly sides: Map<Element, readonly Block[]>;
}

/** @throws Refusal naming file and line */
export function readContent(markup: string, figures: Figures = new Map(), file = 'markup'): Content {
  const root = parseMarkup(markup, file);
  const reading: Reading = { figures, blocks: new Map(), sides: new Map() };
  if (root.name === 'document') return readDocument(root, reading);
  if (root.name === 'cards') return readCards(root, reading);
  throw refuseMarkup(root.at, `<${root.name}> is neither <document> nor <cards>.`);
}

function readDocument(element: Element, reading: Reading): Content {
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
    blocks: withContents(readBlocks({ ...element, children: rest }, reading)),
  };
}

function readCards(element: Element, reading: Reading): Content {
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
      const known = reading.sides.get(side);
      if (known !== undefined) return known;
      allow(side, []);
      const blocks = readBlocks(side, reading);
      reading.sides.set(side, blocks);
      return blocks;
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

function readBlocks(element: Element, reading: Reading): Block[] {
  return elementsOf(element, blockNames).map((child) => {
    const block = reading.blocks.get(child) ?? readBlock(child, reading);
    reading.blocks.set(child, block);
    return block;
  });
}

function readBlock(element: Element, reading: Reading): Block {
  switch (element.name) {
    case 'section': {
      allow(element, ['id', 'new-page']);
      return {
        kind: 'section',
        ...identity(element),
        newPage: yes(element, 'new-page'),
        blocks: readBlocks(element, reading),
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
      allow(element, ['size', 'align', 'language']);
      return {
        kind: 'paragraph',
        ...languageOf(element),
        text: readInline(element),
        size: choice(element, 'size', sizes, 'normal'),
        align: choice(element, 'align', aligns, 'start'),
      };
    }
    case 'list': {
      allow(element, ['ordered']);
      const items = elementsOf(element, ['item']).map((item) => {
        allow(item, []);
        return readItem(item, reading);
      });
      return { kind: 'list', ordered: yes(element, 'ordered'), items };
    }
    case 'table':
      return readTable(element);
    case 'figure': {
      allow(element, ['name']);
      const scene = reading.figures.get(required(element, 'name'));
      if (scene === undefined)
        throw refuseMarkup(element.at, `There is no figure "${element.attributes.get('name')}".`);
      return { kind: 'figure', scene, caption: readInline(element) };
    }
    case 'columns': {
      allow(element, []);
      const columns = elementsOf(element, ['column']);
      for (const column of columns) allow(column, ['share', 'mm']);
      if (columns.length === 0) throw refuseMarkup(element.at, '<columns> holds at least one <column>.');
      return {
        kind: 'columns',
        shares: columns.map((column) => positive(column, 'share', 1)),
        widthsMm: columns.map((column) => number(column, 'mm', 0)),
        columns: columns.map((column) => readBlocks(column, reading)),
      };
    }
    case 'keep':
    case 'panel':
      allow(element, []);
      return { kind: element.name, blocks: readBlocks(element, reading) };
    case 'space':
      allow(element, ['mm']);
      empty(element);
      return { kind: 'space', heightMm: positive(element, 'mm') };
    case 'contents':
      allow(element, []);
      empty(element);
      return { kind: 'contents', entries: [] };
    default:
      allow(element, []);
      empty(element);
      return { kind: element.name === 'rule' ? 'rule' : element.name === 'fill' ? 'fill' : 'new-page' };
  }
}

/** An item of words alone is one paragraph; an item of blocks is those blocks. */
function readItem(item: Element, reading: Reading): Block[] {
  const holdsBlocks = item.children.some(
    (child) => typeof child !== 'string' && blockNames.includes(child.name),
  );
  if (holdsBlocks) return readBlocks(item, reading);
  return [{ kind: 'paragraph', text: readInline(item), size: 'normal', align: 'start' }];
}
