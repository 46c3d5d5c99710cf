/** Turns blocks into slabs: which room, size and gap each element gets, and its part in the structure. */
import type { Block, Inline, Table } from './content.ts';
import { layFigure } from './lay-figure.ts';
import { layTable } from './lay-table.ts';
import { layText, placeLine, plainText, sizeOf, stack } from './lay-text.ts';
import type { Item } from './page.ts';
import { type Part, shifted } from './set-down.ts';
import {
  addNode,
  gap,
  heightOf,
  inLanguage,
  pointsPerMm,
  type Setting,
  type Slab,
  withoutSpareGaps,
} from './slab.ts';
import { wrap } from './wrap.ts';

export function layBlocks(
  blocks: readonly Block[],
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab[] {
  return withoutSpareGaps(
    blocks.flatMap((block, index) => {
      const slabs = layBlock(block, widthPt, setting, parent);
      const next = blocks[index + 1]?.kind;
      return introduces.has(block.kind) && (next === 'table' || next === 'columns') ? withNext(slabs) : slabs;
    }),
  );
}

/** Words before a table say what it is, and stand on the page on which it begins. */
const introduces: ReadonlySet<Block['kind']> = new Set(['paragraph', 'list', 'panel', 'keep']);

function withNext(slabs: readonly Slab[]): Slab[] {
  const last = slabs.findLastIndex(({ kind }) => kind === 'slab');
  return slabs.map((slab, index) => (index >= last ? { ...slab, breakBelow: false } : slab));
}

export function layBlock(
  block: Block,
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab[] {
  const between = setting.gapEm * setting.sizePt;
  switch (block.kind) {
    case 'heading': {
      const sizePt = Math.max(
        setting.leastPt,
        setting.sizePt * setting.headingSizes[(block.level - 1) as 0 | 1 | 2 | 3],
      );
      const node = addNode(setting, `H${block.level}`, parent);
      const lines = layText(block.text, widthPt, sizePt, setting, {
        strong: true,
        node,
        what: 'the heading',
      });
      const noted = lines.map(
        (slab, index): Slab => ({
          ...slab,
          breakBelow: false,
          ...(index === 0
            ? {
                heading: { text: plainText(block.text), level: block.level },
                ...(block.id === undefined ? {} : { ids: [block.id] }),
              }
            : {}),
        }),
      );
      return [gap(between * (block.level < 3 ? 2.2 : 1.5)), ...noted, gap(between * 0.5, false)];
    }
    case 'paragraph': {
      // Whoever hears the page read is not told of a paragraph that says nothing.
      if (block.text.length === 0) return [];
      const node = addNode(setting, 'P', parent, inLanguage(block));
      const lines = layText(block.text, widthPt, sizeOf(block.size, setting), setting, {
        node,
        align: block.align,
        what: 'the paragraph',
      });
      return [...lines, gap(between)];
    }
    case 'list':
      return layList(block, widthPt, setting, parent);
    case 'table':
      return [...layTable(block, widthPt, setting, parent), gap(between * 1.5)];
    case 'figure':
      return [...layFigure(block, widthPt, setting, parent), gap(between)];
    case 'section': {
      const slabs = layBlocks(block.blocks, widthPt, setting, addNode(setting, 'Sect', parent));
      const [first, ...rest] = slabs;
      if (first === undefined) return [];
      const named =
        block.id === undefined ? slabs : [{ ...first, ids: [...(first.ids ?? []), block.id] }, ...rest];
      return [...(block.newPage ? [newPage] : []), gap(between * 1.5), ...named, gap(between)];
    }
    case 'columns':
      return [layColumns(block, widthPt, setting, parent), gap(between)];
    case 'keep':
      return [...together(layBlocks(block.blocks, widthPt, setting, parent)), gap(between)];
    case 'panel':
      return [layPanel(block.blocks, widthPt, setting, parent), gap(between)];
    case 'space':
      return [{ kind: 'gap', heightPt: (block.heightMm * 72) / 25.4, parts: [], breakBelow: true }];
    case 'contents':
      return [...layTable(contentsTable(block.entries), widthPt, setting, parent), gap(between)];
    case 'fill':
      return [{ kind: 'slab', heightPt: 0, parts: [], breakBelow: true, grows: true }];
    case 'rule': {
      const heightPt = 0.4 * setting.sizePt;
      const line: Item = {
        kind: 'line',
        points: [
          [0, heightPt / 2],
          [widthPt, heightPt / 2],
        ],
        widthPt: 0.5,
      };
      return [{ kind: 'slab', heightPt, parts: [line], breakBelow: true }];
    }
    case 'new-page':
      return [newPage];
  }
}

function contentsTable(entries: Extract<Block, { kind: 'contents' }>['entries']): Table {
  return {
    kind: 'table',
    caption: [],
    columns: [
      { align: 'start', share: 1 },
      { align: 'end', share: 0 },
    ],
    head: [],
    body: entries.map(({ id, text }) => ({
      cells: [
        {
          text: [{ kind: 'text', text, strong: false, code: false, whole: false }],
          span: 1,
          rows: 1,
          heading: false,
        },
        { text: [{ kind: 'page-of', id, flush: true }], span: 1, rows: 1, heading: false },
      ],
    })),
    lines: 'none',
    size: 'normal',
    contents: true,
  };
}

const newPage: Slab = { kind: 'new-page', heightPt: 0, parts: [], breakBelow: true };

/** Slabs between which no page ends. */
export function together(slabs: readonly Slab[]): Slab[] {
  return slabs.map((slab, index) => (index < slabs.length - 1 ? { ...slab, breakBelow: false } : slab));
}

/** What the slabs that are joined into one carried besides their parts. */
function carried(slabs: readonly Slab[]): {
  ids?: readonly string[];
  heading?: { text: string; level: number };
} {
  const ids = slabs.flatMap((slab) => slab.ids ?? []);
  const heading = slabs.find((slab) => slab.heading !== undefined)?.heading;
  return { ...(ids.length === 0 ? {} : { ids }), ...(heading === undefined ? {} : { heading }) };
}

function layList(
  block: Extract<Block, { kind: 'list' }>,
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab[] {
  const between = setting.gapEm * setting.sizePt;
  const list = addNode(setting, 'L', parent);
  const marker = (index: number): string => (block.ordered ? `${index + 1}.` : '•');
  const widest = setting.measure.widthEm(marker(block.items.length - 1), 'regular');
  const indent = (widest + 0.5) * setting.sizePt;
  const slabs = block.items.flatMap((blocks, index) => {
    const item = addNode(setting, 'LI', list);
    const label = addNode(setting, 'Lbl', item);
    const text: Inline = { kind: 'text', text: marker(index), strong: false, code: false, whole: true };
    const [line] = wrap([text], indent, setting.sizePt, setting, { node: label }).lines;
    const body = layBlocks(blocks, widthPt - indent, setting, addNode(setting, 'LBody', item));
    const inner = body.map(
      (slab, at): Slab => ({
        ...slab,
        parts: [
          ...(at === 0 && line !== undefined ? [placeLine(line, indent, setting, 'start')] : []),
          shifted(slab.parts, indent, 0),
        ],
      }),
    );
    return [...inner, gap(between * 0.4)];
  });
  return [...withoutSpareGaps(slabs), gap(between)];
}

function layColumns(
  block: Extract<Block, { kind: 'columns' }>,
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab {
  const gutter = 1.5 * setting.sizePt;
  const fixed = block.widthsMm.map((mm) => mm * pointsPerMm);
  const whole = block.shares.reduce((sum, share, index) => sum + (fixed[index] ? 0 : share), 0);
  const room = widthPt - gutter * (block.columns.length - 1) - fixed.reduce((sum, width) => sum + width, 0);
  const parts: Part[] = [];
  const all: Slab[] = [];
  let x = 0;
  let heightPt = 0;
  block.columns.forEach((blocks, index) => {
    const wide = fixed[index] || (room * (block.shares[index] ?? 1)) / whole;
    const slabs = layBlocks(blocks, wide, setting, parent);
    all.push(...slabs);
    parts.push(...stack(slabs, x).parts);
    heightPt = Math.max(heightPt, heightOf(slabs));
    x += wide + gutter;
  });
  return { kind: 'slab', heightPt, parts, breakBelow: true, ...carried(all) };
}

function layPanel(
  blocks: readonly Block[],
  widthPt: number,
  setting: Setting,
  parent: number | undefined,
): Slab {
  const pad = 0.4 * setting.sizePt;
  const slabs = layBlocks(blocks, widthPt - 2 * pad, setting, parent);
  const heightPt = heightOf(slabs) + 2 * pad;
  const frame: Item = {
    kind: 'polygon',
    points: [
      [0, 0],
      [widthPt, 0],
      [widthPt, heightPt],
      [0, heightPt],
    ],
    strokePt: 0.9,
  };
  return {
    kind: 'slab',
    heightPt,
    parts: [frame, ...stack(slabs, pad, pad).parts],
    breakBelow: true,
    ...carried(slabs),
  };
}
