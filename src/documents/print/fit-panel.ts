/** Sets blocks into a panel of fixed size, as large as fits, and says what would fit where they do not. */
import type { Cuts } from './chunks.ts';
import type { Block } from './content.ts';
import { layBlocks } from './lay-blocks.ts';
import { stack } from './lay-text.ts';
import type { Measure } from './measure.ts';
import { type Item, moved } from './page.ts';
import { addNode, heightOf, type Notes, newNotes, pointsPerMm, type Setting, type Slab } from './slab.ts';

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

function panelSetting(measure: Measure, sizePt: number, toPt: number, notes: Notes, cuts: Cuts): Setting {
  return {
    measure,
    sizePt,
    leastPt: toPt,
    leading: 1.2,
    gapEm: 0.22,
    cellPadEm: 0.3,
    headingSizes: [1.3, 1.12, 1, 1],
    notes,
    cuts,
  };
}

/** The blocks laid at one size, with notes of their own: the structure begins with the panel itself. */
export interface Trial {
  readonly sizePt: number;
  readonly slabs: readonly Slab[];
  readonly notes: Notes;
  readonly fits: boolean;
}

function layAt(
  sizePt: number,
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  cuts: Cuts = new Map(),
): Trial {
  const notes = newNotes();
  const setting = panelSetting(measure, sizePt, sizes.toPt, notes, cuts);
  const slabs = layBlocks(blocks, room.widthPt, setting, addNode(setting, 'Sect', undefined));
  return {
    sizePt,
    slabs,
    notes,
    fits: notes.overflows.length === 0 && heightOf(slabs) <= room.heightPt + 0.01,
  };
}

/**
 * The largest size that fits, since smaller type never needs more room; else the smallest. The search begins at
 * the size that did for the card before: cards of one group are much alike, and two trials are then enough.
 */
function bestTrial(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  guessPt = sizes.fromPt,
): Trial {
  const cuts: Cuts = new Map();
  const most = Math.ceil((sizes.fromPt - sizes.toPt) / stepPt);
  const at = (step: number): Trial =>
    layAt(Math.min(sizes.fromPt, sizes.toPt + step * stepPt), blocks, room, sizes, measure, cuts);
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
  return best ?? smallest ?? at(0);
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
    /** The size that did for a panel much like it. */
    readonly guessPt?: number;
    /** Panels already set, by what they hold, where many are the same. */
    readonly set?: Map<string, Trial>;
  },
  sizes: Sizes,
  measure: Measure,
  notes: Notes,
  parent: number,
  larger: readonly { readonly name: string; readonly room: Room }[],
): { readonly items: readonly Item[]; readonly sizePt: number } {
  const { what, blocks, room, left, top } = panel;
  const key = panel.set === undefined ? '' : JSON.stringify(blocks);
  const best = panel.set?.get(key) ?? bestTrial(blocks, room, sizes, measure, panel.guessPt);
  panel.set?.set(key, best);
  const { sizePt } = best;
  const nodes = notes.structure.length;
  for (const node of best.notes.structure)
    notes.structure.push({ ...node, parent: node.parent === undefined ? parent : node.parent + nodes });
  for (const [character, text] of best.notes.missing)
    if (!notes.missing.has(character)) notes.missing.set(character, text);
  for (const overflow of best.notes.overflows)
    notes.overflows.push({ ...overflow, what: `${what}: ${overflow.what}` });
  notes.smallest = Math.min(notes.smallest, best.notes.smallest);
  const needed = heightOf(best.slabs);
  if (needed <= room.heightPt + 0.01)
    return { items: stack(filled(best.slabs, room.heightPt - needed), left, top, nodes).items, sizePt };
  notes.overflows.push({
    what,
    neededMm: Math.ceil(needed / pointsPerMm),
    availableMm: Math.floor(room.heightPt / pointsPerMm),
    wouldFit: wouldFit(blocks, room, sizes, measure, larger, needed),
  });
  return {
    items: [
      ...stack(whatFits(best.slabs, room.heightPt - 5), left, top, nodes).items,
      ...moreMarks(room).map((item) => moved(item, left, top)),
    ],
    sizePt,
  };
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
