/**
 * The common coin of layout: every block becomes a run of slabs, strips as wide as the text, set one under
 * the other. A line of a paragraph is a slab, and so is a row of a table. Where a page may end is written
 * on the slabs, so filling pages ({@link ./fill-pages.ts}) knows nothing of blocks.
 */
import type { Cuts } from './chunks.ts';
import type { Measure } from './measure.ts';
import type { Overflow, Role, StructureNode } from './page.ts';
import type { Part } from './set-down.ts';

export interface Slab {
  readonly kind: 'slab' | 'gap' | 'new-page';
  readonly heightPt: number;
  /** Positions from the slab's top left corner. */
  readonly parts: readonly Part[];
  /** Whether a page may end below. */
  readonly breakBelow: boolean;
  /** Slabs set again on top if a page begins with this one: the head of its table. */
  readonly head?: readonly Slab[];
  /** Ids and headings that stand here, for page numbers and the outline. */
  readonly ids?: readonly string[];
  readonly heading?: { readonly text: string; readonly level: number };
  /** Takes what room a panel has left. */
  readonly grows?: true;
}

/** How text is set: sizes and room, the same for a whole document or card. */
export interface Setting {
  readonly measure: Measure;
  readonly sizePt: number;
  /** No type is set smaller. */
  readonly leastPt: number;
  /** Line to line, as a part of the size. */
  readonly leading: number;
  /** Room between blocks, as a part of the size. */
  readonly gapEm: number;
  /** Room on either side of the words in a cell, as a part of the size. */
  readonly cellPadEm: number;
  readonly headingSizes: readonly [number, number, number, number];
  readonly notes: Notes;
  readonly cuts: Cuts;
  /** Whether a word wider than its room is broken between letters, with a hyphen; on a card names stay whole. */
  readonly hyphenates?: true;
  /** The page of each id, as found by laying the document out before. */
  readonly pageNumbers?: ReadonlyMap<string, number>;
}

/** What layout notes down beside the slabs. */
export interface Notes {
  readonly structure: StructureNode[];
  readonly overflows: Overflow[];
  readonly missing: Map<string, string>;
  /** The size of the smallest type set. */
  smallest: number;
  /** Whether a text holds the number of a page that was not known yet, other than at the end of its line. */
  refers: boolean;
}

export function newNotes(): Notes {
  return {
    structure: [],
    overflows: [],
    missing: new Map(),
    smallest: Number.POSITIVE_INFINITY,
    refers: false,
  };
}

/** Adds a part to the structure and gives its number. */
export function addNode(
  setting: Setting,
  role: Role,
  parent: number | undefined,
  more: Partial<StructureNode> = {},
): number {
  setting.notes.structure.push({ ...more, role, parent });
  return setting.notes.structure.length - 1;
}

/** What the structure says of words that are not in the language of the document. */
export function inLanguage({ language }: { readonly language?: string }): Partial<StructureNode> {
  return language === undefined ? {} : { language };
}

export const pointsPerMm = 72 / 25.4;

/** Room that vanishes at the top of a page; of two in a row the larger counts. */
export function gap(heightPt: number, breakBelow = true): Slab {
  return { kind: 'gap', heightPt, parts: [], breakBelow };
}

/** The slabs with doubled gaps joined and gaps at both ends taken off. */
export function withoutSpareGaps(slabs: readonly Slab[]): Slab[] {
  const kept: Slab[] = [];
  for (const slab of slabs) {
    const last = kept.at(-1);
    if (slab.kind === 'gap' && last?.kind === 'gap') {
      kept[kept.length - 1] = {
        ...slab,
        heightPt: Math.max(slab.heightPt, last.heightPt),
        breakBelow: slab.breakBelow && last.breakBelow,
      };
    } else if (slab.kind !== 'gap' || last !== undefined) kept.push(slab);
  }
  if (kept.at(-1)?.kind === 'gap') kept.pop();
  return kept;
}

export function heightOf(slabs: readonly Slab[]): number {
  return slabs.reduce((sum, slab) => sum + slab.heightPt, 0);
}
