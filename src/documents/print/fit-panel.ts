/** Sets blocks into a panel of fixed size, as large as fits, and says what would fit where they do not. */
import type { Cuts } from './chunks.ts';
import type { Block } from './content.ts';
import { layBlock } from './lay-blocks.ts';
import { stack } from './lay-text.ts';
import type { Measure } from './measure.ts';
import { type Item, moved } from './page.ts';
import { setDown, shifted } from './set-down.ts';
import {
  heightOf,
  type Notes,
  newNotes,
  pointsPerMm,
  type Setting,
  type Slab,
  withoutSpareGaps,
} from './slab.ts';

/** Room for type, without the margins. */
export interface Room {
  readonly widthPt: number;
  readonly heightPt: number;
}

export interface Sizes {
  readonly fromPt: number;
  readonly toPt: number;
}

/** Sizes are tried in steps of a quarter point, finer than the eye tells apart. */
const stepPt = 0.25;

/**
 * Lines and blocks stand this far apart. What does not fit in the smallest type is set close before it is said not
 * to fit: lines of 8 points are still told apart at 1.1, and letters of 8 points are as large as they were.
 */
const spacings = { usual: { leading: 1.2, gapEm: 0.22 }, close: { leading: 1.1, gapEm: 0.08 } } as const;
type Spacing = keyof typeof spacings;

function panelSetting(
  measure: Measure,
  sizePt: number,
  toPt: number,
  notes: Notes,
  cuts: Cuts,
  spacing: Spacing,
): Setting {
  return {
    measure,
    sizePt,
    leastPt: toPt,
    ...spacings[spacing],
    cellPadEm: 0.3,
    headingSizes: [1.3, 1.12, 1, 1],
    notes,
    cuts,
  };
}

/** A block laid at one size, as if it stood alone. */
interface Laid {
  readonly slabs: readonly Slab[];
  readonly notes: Notes;
}

/**
 * Blocks that stand in more than one panel, by the size they were laid at: cards of one group say much the same, and
 * what is the same is laid once. A block is kept when it comes for the second time.
 */
export interface KnownBlocks {
  readonly seen: Map<number, Set<Block>>;
  readonly laid: Map<number, Map<Block, Laid>>;
  /** For each block the size that did for the last panel that holds it, and how many held it. */
  readonly sizes: Map<Block, { readonly sizePt: number; readonly panels: number }>;
}

export function knownBlocks(): KnownBlocks {
  return { seen: new Map(), laid: new Map(), sizes: new Map() };
}

/** The size that did for the panel most like this one: the one with which it shares its rarest block. */
function likelySize(blocks: readonly Block[], { sizes }: KnownBlocks): number | undefined {
  let rarest: { readonly sizePt: number; readonly panels: number } | undefined;
  for (const block of blocks) {
    const known = sizes.get(block);
    if (known !== undefined && (rarest === undefined || known.panels < rarest.panels)) rarest = known;
  }
  return rarest?.sizePt;
}

function rememberSize(blocks: readonly Block[], sizePt: number, { sizes }: KnownBlocks): void {
  for (const block of blocks) sizes.set(block, { sizePt, panels: (sizes.get(block)?.panels ?? 0) + 1 });
}

function layAlone(block: Block, widthPt: number, setting: Setting, known: KnownBlocks): Laid {
  const laidHere = atSize(known.laid, setting.sizePt, () => new Map<Block, Laid>());
  const before = laidHere.get(block);
  if (before !== undefined) return before;
  const notes = newNotes();
  const laid = { slabs: layBlock(block, widthPt, { ...setting, notes }, undefined), notes };
  const seenHere = atSize(known.seen, setting.sizePt, () => new Set<Block>());
  if (seenHere.has(block)) laidHere.set(block, laid);
  else seenHere.add(block);
  return laid;
}

function atSize<Kept>(kept: Map<number, Kept>, sizePt: number, make: () => Kept): Kept {
  const found = kept.get(sizePt) ?? make();
  kept.set(sizePt, found);
  return found;
}

/** The blocks of a panel laid at one size. Their structure is that of the blocks, one after another. */
export interface Trial {
  readonly sizePt: number;
  readonly slabs: readonly Slab[];
  readonly notes: readonly Notes[];
  readonly fits: boolean;
}

function layAt(
  sizePt: number,
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  known: KnownBlocks = knownBlocks(),
  cuts: Cuts = new Map(),
  spacing: Spacing = 'usual',
): Trial {
  const setting = panelSetting(measure, sizePt, sizes.toPt, newNotes(), cuts, spacing);
  const notes: Notes[] = [];
  const slabs: Slab[] = [];
  let nodes = 0;
  for (const block of blocks) {
    const laid = layAlone(block, room.widthPt, setting, known);
    for (const slab of laid.slabs)
      slabs.push(
        slab.parts.length === 0 ? slab : { ...slab, parts: [{ ...shifted(slab.parts, 0, 0), nodes }] },
      );
    notes.push(laid.notes);
    nodes += laid.notes.structure.length;
  }
  const kept = withoutSpareGaps(slabs);
  return {
    sizePt,
    slabs: kept,
    notes,
    fits: notes.every(({ overflows }) => overflows.length === 0) && heightOf(kept) <= room.heightPt + 0.01,
  };
}

/**
 * The largest size that fits, since smaller type never needs more room; else the smallest. The search begins at
 * the size that did for the card most like this one, and two trials are then mostly enough.
 */
function bestTrial(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  known: KnownBlocks,
): Trial {
  const guessPt = likelySize(blocks, known) ?? sizes.fromPt;
  const cuts: Cuts = new Map();
  const most = Math.ceil((sizes.fromPt - sizes.toPt) / stepPt);
  const at = (step: number): Trial =>
    layAt(Math.min(sizes.fromPt, sizes.toPt + step * stepPt), blocks, room, sizes, measure, known, cuts);
  let [fitting, tooLarge] = [-1, most + 1];
  let best: Trial | undefined;
  let smallest: Trial | undefined;
  let stride = 1;
  let step = Math.min(most, Math.max(0, Math.round((guessPt - sizes.toPt) / stepPt)));
  while (tooLarge - fitting > 1) {
    const trial = at(step);
    if (step === 0) smallest = trial;
    if (trial.fits) {
      best = trial;
      fitting = step;
    } else tooLarge = step;
    // Outwards in growing strides until the bound is between two trials, then by halving.
    if (tooLarge > most) step = Math.min(most, fitting + stride);
    else if (fitting < 0) step = Math.max(0, tooLarge - stride);
    else step = Math.floor((fitting + tooLarge) / 2);
    stride *= 2;
  }
  const chosen = best ?? closeTrial(blocks, room, sizes, measure, cuts) ?? smallest ?? at(0);
  rememberSize(blocks, chosen.sizePt, known);
  return chosen;
}

/** Set close in the smallest type; undefined where that does not fit either. */
function closeTrial(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  cuts: Cuts,
): Trial | undefined {
  // What is set close is not known from other cards, and they must not find it among what they know.
  const trial = layAt(sizes.toPt, blocks, room, sizes, measure, knownBlocks(), cuts, 'close');
  return trial.fits ? trial : undefined;
}

/**
 * The items of a panel whose room begins at (left, top). If the blocks do not fit even at the smallest size, the
 * overflow is noted in `notes`, what fits is set, and a row of triangles at the foot shows that more was meant.
 */
export function fitPanel(
  panel: {
    readonly what: string;
    readonly blocks: readonly Block[];
    readonly room: Room;
    readonly left: number;
    readonly top: number;
    readonly known: KnownBlocks;
    /** Panels already set, by what they hold, where many are the same. */
    readonly set?: Map<readonly Block[], Trial>;
  },
  sizes: Sizes,
  measure: Measure,
  notes: Notes,
  parent: number,
  larger: readonly { readonly name: string; readonly room: Room }[],
): readonly Item[] {
  const { what, blocks, room, left, top, known } = panel;
  const best = panel.set?.get(blocks) ?? bestTrial(blocks, room, sizes, measure, known);
  panel.set?.set(blocks, best);
  const root = notes.structure.push({ role: 'Sect', parent }) - 1;
  for (const own of best.notes) takeOver(notes, own, root, what);
  const needed = heightOf(best.slabs);
  const set = (slabs: readonly Slab[]): Item[] => {
    const items: Item[] = [];
    setDown(stack(slabs, left, top).parts, 0, 0, root + 1, measure, items);
    return items;
  };
  if (needed <= room.heightPt + 0.01) return set(filled(best.slabs, room.heightPt - needed));
  notes.overflows.push({
    what,
    neededMm: Math.ceil(needed / pointsPerMm),
    availableMm: Math.floor(room.heightPt / pointsPerMm),
    wouldFit: wouldFit(blocks, room, sizes, measure, larger, needed),
  });
  return [
    ...set(whatFits(best.slabs, room.heightPt - 5)),
    ...moreMarks(room).map((item) => moved(item, left, top)),
  ];
}

/** Adds what a block noted to the notes of the sheet, its parts below the part `root`. */
function takeOver(notes: Notes, own: Notes, root: number, what: string): void {
  const nodes = notes.structure.length;
  for (const node of own.structure)
    notes.structure.push({ ...node, parent: node.parent === undefined ? root : node.parent + nodes });
  for (const [character, text] of own.missing)
    if (!notes.missing.has(character)) notes.missing.set(character, text);
  for (const overflow of own.overflows)
    notes.overflows.push({ ...overflow, what: `${what}: ${overflow.what}` });
  notes.smallest = Math.min(notes.smallest, own.smallest);
}

/** The slabs that grow share what room is left. */
function filled(slabs: readonly Slab[], sparePt: number): readonly Slab[] {
  const growing = slabs.filter((slab) => slab.grows === true).length;
  return growing === 0
    ? slabs
    : slabs.map((slab) => (slab.grows === true ? { ...slab, heightPt: sparePt / growing } : slab));
}

function wouldFit(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  larger: readonly { readonly name: string; readonly room: Room }[],
  needed: number,
): string {
  const size = larger.find((candidate) => layAt(sizes.toPt, blocks, candidate.room, sizes, measure).fits);
  const lines = Math.ceil((needed - room.heightPt) / (sizes.toPt * 1.2));
  const drop = `take out ${lines} line${lines === 1 ? '' : 's'} of ${sizes.toPt} pt`;
  return size === undefined
    ? `No larger card holds it: ${drop}.`
    : `A card of size ${size.name} holds it; or ${drop}.`;
}

function whatFits(slabs: readonly Slab[], heightPt: number): Slab[] {
  const kept: Slab[] = [];
  let y = 0;
  for (const slab of slabs) {
    y += slab.heightPt;
    if (y > heightPt) break;
    kept.push(slab);
  }
  return kept;
}

function moreMarks(room: Room): Item[] {
  return [0.5, 0.42, 0.58].map((at): Item => {
    const x = room.widthPt * at;
    const y = room.heightPt;
    return {
      kind: 'polygon',
      points: [
        [x - 3, y - 4],
        [x + 3, y - 4],
        [x, y],
      ],
      fill: 0,
    };
  });
}
