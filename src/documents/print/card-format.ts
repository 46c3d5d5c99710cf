/** The sizes of cards, how many a sheet holds, and where the back of each lies. */
import type { CardSize, Flip } from './content.ts';
import type { Room } from './fit-panel.ts';
import { pointsPerMm } from './slab.ts';

export interface CardFormat {
  readonly name: string;
  /** What is cut from the sheet. */
  readonly paperWidthMm: number;
  readonly paperHeightMm: number;
  /** Film left round the paper so that the finished card has its stated size; 0 where pouches are made for the paper. */
  readonly sealMm: number;
  /** Panels side by side on one side of the paper. */
  readonly panels: 1 | 2;
}

const seal = 3;

/**
 * ID-1 is 85.60 by 53.98 mm (ISO/IEC 7810:2019, table 1), A7 and A6 are from ISO 216, the index card is 3 by 5
 * inches. 3 mm of sealed edge is the least that film makers ask for on small cards (common practice, 1/8 inch).
 */
export const cardFormats: { readonly [size in CardSize]: CardFormat } = {
  'id-1': {
    name: 'id-1',
    paperWidthMm: 85.6 - 2 * seal,
    paperHeightMm: 53.98 - 2 * seal,
    sealMm: seal,
    panels: 1,
  },
  fold: {
    name: 'fold',
    paperWidthMm: 2 * (85.6 - 2 * seal),
    paperHeightMm: 53.98 - 2 * seal,
    sealMm: seal,
    panels: 2,
  },
  a7: { name: 'a7', paperWidthMm: 74, paperHeightMm: 105, sealMm: 0, panels: 1 },
  index: { name: 'index', paperWidthMm: 127, paperHeightMm: 76.2, sealMm: 0, panels: 1 },
  a6: { name: 'a6', paperWidthMm: 105, paperHeightMm: 148, sealMm: 0, panels: 1 },
};

/** Office printers leave 4 to 6 mm white (two printer manuals give 4.2 mm); 1/4 inch is safe on all (common practice). */
export const sheetMarginMm = 6.35;
/** Between the papers of two cards: the film of both, or the crop marks. */
const gapMm = 6;
/** Room at the foot for the ruler and the note. */
export const footMm = 11;
/** The two sides of an office printer lie 1 to 2 mm apart (common practice); type keeps clear of the cut by more. */
export const panelMarginMm = 2.5;

export interface Slot {
  /** Top left corner of the card's paper on the sheet, in points. */
  readonly x: number;
  readonly y: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

export interface Grid {
  /** Cards lie turned by 90 degrees. */
  readonly turned: boolean;
  readonly slots: readonly Slot[];
}

/** As many cards as the sheet holds, upright if turning them gains nothing. */
export function gridOf(
  format: CardFormat,
  paper: { readonly widthPt: number; readonly heightPt: number },
): Grid {
  const lay = (turned: boolean): Grid => {
    const [wide, high] = turned
      ? [format.paperHeightMm, format.paperWidthMm]
      : [format.paperWidthMm, format.paperHeightMm];
    const roomX = paper.widthPt / pointsPerMm - 2 * (sheetMarginMm + format.sealMm);
    const roomY = paper.heightPt / pointsPerMm - 2 * (sheetMarginMm + format.sealMm) - footMm;
    const columns = Math.max(0, Math.floor((roomX + gapMm + 1e-6) / (wide + gapMm)));
    const rows = Math.max(0, Math.floor((roomY + gapMm + 1e-6) / (high + gapMm)));
    const left = (paper.widthPt / pointsPerMm - columns * wide - (columns - 1) * gapMm) / 2;
    const top = (paper.heightPt / pointsPerMm - footMm - rows * high - (rows - 1) * gapMm) / 2;
    const slots: Slot[] = [];
    for (let row = 0; row < rows; row += 1)
      for (let column = 0; column < columns; column += 1)
        slots.push({
          x: (left + column * (wide + gapMm)) * pointsPerMm,
          y: (top + row * (high + gapMm)) * pointsPerMm,
          widthPt: wide * pointsPerMm,
          heightPt: high * pointsPerMm,
        });
    return { turned, slots };
  };
  const upright = lay(false);
  const turned = lay(true);
  return turned.slots.length > upright.slots.length ? turned : upright;
}

/** The slot as seen on the back of the sheet. */
export function behind(
  slot: Slot,
  paper: { readonly widthPt: number; readonly heightPt: number },
  flip: Flip,
): Slot {
  return flip === 'long-edge'
    ? { ...slot, x: paper.widthPt - slot.x - slot.widthPt }
    : { ...slot, y: paper.heightPt - slot.y - slot.heightPt };
}

/** How far the back of a card is turned, so that the card turns like a page in the hand. */
export function turnBehind(turned: boolean, flip: Flip): 0 | 90 | 180 | 270 {
  if (flip === 'long-edge') return turned ? 270 : 0;
  return turned ? 90 : 180;
}

/** The room for type on one panel of a card. */
export function panelRoom(format: CardFormat): Room {
  return {
    widthPt: (format.paperWidthMm / format.panels - 2 * panelMarginMm) * pointsPerMm,
    heightPt: (format.paperHeightMm - 2 * panelMarginMm) * pointsPerMm,
  };
}
