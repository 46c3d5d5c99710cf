/** Sets blocks into a panel of fixed size, as large as fits, and says what would fit where they do not. */
import type { Block } from './content.ts';
import { layBlocks } from './lay-blocks.ts';
import { stack } from './lay-text.ts';
import type { Measure } from './measure.ts';
import type { Item } from './page.ts';
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

function panelSetting(measure: Measure, sizePt: number, toPt: number, notes: Notes): Setting {
  return {
    measure,
    sizePt,
    leastPt: toPt,
    leading: 1.2,
    gapEm: 0.22,
    cellPadEm: 0.3,
    headingSizes: [1.3, 1.12, 1, 1],
    notes,
  };
}

/** The largest size at which the blocks fit the room, if there is one. */
export function fittingSize(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
): number | undefined {
  for (let sizePt = sizes.fromPt; sizePt >= sizes.toPt - 1e-9; sizePt -= stepPt) {
    const notes = newNotes();
    const setting = panelSetting(measure, sizePt, sizes.toPt, notes);
    const slabs = layBlocks(blocks, room.widthPt, setting, addNode(setting, 'Sect', undefined));
    if (notes.overflows.length === 0 && heightOf(slabs) <= room.heightPt + 0.01) return sizePt;
  }
  return undefined;
}

/**
 * The items of a panel, from its top left corner. If the blocks do not fit even at the smallest size, the
 * overflow is noted in `notes`, what fits is set, and a row of triangles at the foot shows that more was meant.
 */
export function fitPanel(
  what: string,
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  notes: Notes,
  parent: number,
  larger: readonly { readonly name: string; readonly room: Room }[],
): { readonly items: readonly Item[]; readonly sizePt: number } {
  const sizePt = fittingSize(blocks, room, sizes, measure) ?? sizes.toPt;
  const trial = newNotes();
  const setting = panelSetting(measure, sizePt, sizes.toPt, { ...notes, overflows: trial.overflows });
  const part = addNode(setting, 'Sect', parent);
  const slabs = layBlocks(blocks, room.widthPt, setting, part);
  notes.smallest = Math.min(notes.smallest, setting.notes.smallest);
  for (const overflow of trial.overflows)
    notes.overflows.push({ ...overflow, what: `${overflow.what} of ${what}` });
  const needed = heightOf(slabs);
  if (needed <= room.heightPt + 0.01) return { items: stack(slabs).items, sizePt };
  const neededMm = Math.ceil(needed / pointsPerMm);
  const availableMm = Math.floor(room.heightPt / pointsPerMm);
  notes.overflows.push({
    what,
    neededMm,
    availableMm,
    wouldFit: wouldFit(blocks, room, sizes, measure, larger, needed),
  });
  return { items: [...stack(whatFits(slabs, room.heightPt - 5)).items, ...moreMarks(room)], sizePt };
}

function wouldFit(
  blocks: readonly Block[],
  room: Room,
  sizes: Sizes,
  measure: Measure,
  larger: readonly { readonly name: string; readonly room: Room }[],
  needed: number,
): string {
  const size = larger.find((candidate) => fittingSize(blocks, candidate.room, sizes, measure) !== undefined);
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
