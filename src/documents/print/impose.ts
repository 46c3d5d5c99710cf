/**
 * Cards, several to a sheet, both sides in register, ready to cut and to seal in film.
 *
 * A spot at (x, y) of the front lies at (W - x, y) of the back if the sheet turns about its vertical edge
 * and at (x, H - y) if it turns about its horizontal edge; each back is turned so that a card in the hand
 * turns like a page. The paper of an ID-1 card is smaller than ISO/IEC 7810 says by the sealed edge of the
 * film, so that the laminated card has the size of a bank card. Crop marks stand outside the trim.
 */
import type { Card, CardDocument, CardSize, Flip } from './content.ts';
import { fitPanel, type Room } from './fit-panel.ts';
import { layText } from './lay-text.ts';
import type { Measure } from './measure.ts';
import { type GroupItem, type Item, moved, type Page } from './page.ts';
import { addNode, type Notes, newNotes, pointsPerMm, type Setting } from './slab.ts';

export interface Imposition {
  /** What the printer sets the back too far to the right and too low, in mm, as read from its test sheet; taken back here. */
  readonly backOffsetMm?: { readonly right: number; readonly down: number };
}

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
const footMm = 11;
/** The two sides of an office printer lie 1 to 2 mm apart (common practice); type keeps clear of the cut by more. */
const panelMarginMm = 2.5;

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

export function impose(
  content: CardDocument,
  paper: { readonly widthPt: number; readonly heightPt: number },
  measure: Measure,
  notes: Notes,
  imposition: Imposition,
): Page[] {
  const format = cardFormats[content.cardSize];
  const grid = gridOf(format, paper);
  const margin = panelMarginMm * pointsPerMm;
  const setting: Setting = {
    measure,
    sizePt: 8,
    leastPt: 8,
    leading: 1.2,
    gapEm: 0.2,
    cellPadEm: 0,
    headingSizes: [1, 1, 1, 1],
    notes,
    cuts: new Map(),
  };
  const root = addNode(setting, 'Document', undefined);
  const larger = largerThan(content.cardSize);
  const room = panelRoom(format);
  const side = (card: Card, name: 'front' | 'back', left = margin): readonly Item[] =>
    fitPanel(
      { what: `card ${card.id}, ${name}`, blocks: card[name], room, left, top: margin },
      content,
      measure,
      notes,
      root,
      larger,
    );

  const pages: Page[] = [];
  for (let from = 0; from < content.cards.length; from += grid.slots.length) {
    const cards = content.cards.slice(from, from + grid.slots.length);
    const fronts: Item[] = [];
    const backs: Item[] = [];
    cards.forEach((card, index) => {
      const slot = grid.slots[index];
      if (slot === undefined) return;
      if (format.panels === 2) {
        // Folded with the print outwards, the right half is the front and the left half its back.
        const half = (format.paperWidthMm / 2) * pointsPerMm;
        const front = side(card, 'front', half + margin);
        const back = side(card, 'back');
        fronts.push(
          group(slot, [...front, ...back], format, grid.turned ? 90 : 0),
          ...cutMarks(slot, format, grid.turned),
        );
        fronts.push(...slotName(slot, `${card.id}`, measure, format));
        return;
      }
      const front = side(card, 'front');
      const back = side(card, 'back');
      const reverse = behind(slot, paper, content.flip);
      fronts.push(
        group(slot, front, format, grid.turned ? 90 : 0),
        ...cutMarks(slot, format, grid.turned),
        ...slotName(slot, `${card.id} A`, measure, format),
      );
      backs.push(
        group(reverse, back, format, turnBehind(grid.turned, content.flip)),
        ...slotName(reverse, `${card.id} B`, measure, format),
      );
    });
    const foot = sheetFoot(content, paper, setting);
    pages.push({ ...paper, items: [...fronts, ...foot] });
    const { right, down } = imposition.backOffsetMm ?? { right: 0, down: 0 };
    if (format.panels === 1)
      pages.push({
        ...paper,
        items: backs.map((item) => moved(item, -right * pointsPerMm, -down * pointsPerMm)),
      });
  }
  return pages;
}

function group(slot: Slot, items: readonly Item[], format: CardFormat, turn: 0 | 90 | 180 | 270): GroupItem {
  const widthPt = format.paperWidthMm * pointsPerMm;
  const heightPt = format.paperHeightMm * pointsPerMm;
  return {
    kind: 'group',
    x: slot.x + (slot.widthPt - widthPt) / 2,
    y: slot.y + (slot.heightPt - heightPt) / 2,
    widthPt,
    heightPt,
    turn,
    items,
  };
}

function largerThan(size: CardSize): { name: string; room: Room }[] {
  const area = (format: CardFormat): number => (format.paperWidthMm * format.paperHeightMm) / format.panels;
  const own = area(cardFormats[size]);
  return Object.values(cardFormats)
    .filter((format) => area(format) > own + 1)
    .sort((a, b) => area(a) - area(b))
    .map((format) => ({ name: format.name, room: panelRoom(format) }));
}

/** Crop marks of 0.25 pt beside each corner of the paper, the corners of the film, and the ends of the fold. */
function cutMarks(slot: Slot, format: CardFormat, turned: boolean): Item[] {
  const mm = pointsPerMm;
  const items: Item[] = [];
  const line = (x1: number, y1: number, x2: number, y2: number, dashPt?: readonly number[]): void => {
    items.push({
      kind: 'line',
      points: [
        [x1, y1],
        [x2, y2],
      ],
      widthPt: 0.25,
      ...(dashPt === undefined ? {} : { dashPt }),
    });
  };
  for (const [x, sx] of [
    [slot.x, -1],
    [slot.x + slot.widthPt, 1],
  ] as const)
    for (const [y, sy] of [
      [slot.y, -1],
      [slot.y + slot.heightPt, 1],
    ] as const) {
      line(x + sx * 0.5 * mm, y, x + sx * 2.5 * mm, y);
      line(x, y + sy * 0.5 * mm, x, y + sy * 2.5 * mm);
      if (format.sealMm > 0) {
        // The outer corner: where the film is cut once the paper is sealed in.
        const [fx, fy] = [x + sx * format.sealMm * mm, y + sy * format.sealMm * mm];
        line(fx, fy, fx - sx * 1.5 * mm, fy, [0.6, 0.8]);
        line(fx, fy, fx, fy - sy * 1.5 * mm, [0.6, 0.8]);
      }
    }
  if (format.panels === 2) {
    const [cx, cy] = [slot.x + slot.widthPt / 2, slot.y + slot.heightPt / 2];
    if (turned) {
      line(slot.x - 2.5 * mm, cy, slot.x - 0.5 * mm, cy, [1, 1]);
      line(slot.x + slot.widthPt + 0.5 * mm, cy, slot.x + slot.widthPt + 2.5 * mm, cy, [1, 1]);
    } else {
      line(cx, slot.y - 2.5 * mm, cx, slot.y - 0.5 * mm, [1, 1]);
      line(cx, slot.y + slot.heightPt + 0.5 * mm, cx, slot.y + slot.heightPt + 2.5 * mm, [1, 1]);
    }
  }
  return items;
}

/** A printer's mark: the card's short name in the gap above its paper, the same spot on both sides. */
function slotName(slot: Slot, name: string, measure: Measure, format: CardFormat): Item[] {
  const sizePt = 6;
  const setting: Setting = {
    measure,
    sizePt,
    leastPt: sizePt,
    leading: 1,
    gapEm: 0,
    cellPadEm: 0,
    headingSizes: [1, 1, 1, 1],
    notes: newNotes(),
    cuts: new Map(),
  };
  const [line] = layText(
    [{ kind: 'text', text: name, strong: false, code: false, whole: true }],
    slot.widthPt,
    sizePt,
    setting,
    { align: 'center', what: 'the name' },
  );
  const up = format.panels === 2 ? 8.5 : 7;
  // In the middle of a fold stands the mark of the fold.
  const aside = format.panels === 2 ? slot.widthPt / 4 : 0;
  return (line?.items ?? []).map((item) => moved(item, slot.x + aside, slot.y - up));
}

/** A ruler of 50 mm to check the scale by, and the note beside it. */
function sheetFoot(
  content: CardDocument,
  paper: { readonly widthPt: number; readonly heightPt: number },
  setting: Setting,
): Item[] {
  const mm = pointsPerMm;
  const left = (sheetMarginMm + 3) * mm;
  const y = paper.heightPt - (sheetMarginMm + 2) * mm;
  const items: Item[] = [...ruler(left, y, 50, true)];
  const plain = { ...setting, notes: newNotes(), cuts: new Map() };
  const [label] = layText(
    [{ kind: 'text', text: '50 mm', strong: false, code: false, whole: true }],
    20 * mm,
    8,
    plain,
    { what: 'the ruler' },
  );
  for (const item of label?.items ?? []) items.push(moved(item, left + 51 * mm, y - 8));
  const width = paper.widthPt - left - (sheetMarginMm + 70) * mm;
  const note = layText(content.note, width, 8, setting, { what: 'the note' });
  if (note.length > 3)
    setting.notes.overflows.push({
      what: 'the note at the foot of the sheet',
      neededMm: Math.ceil((note.length * 8 * 1.2) / mm),
      availableMm: footMm,
      wouldFit: `It takes ${note.length} lines and there is room for 3: shorten it.`,
    });
  note.slice(0, 3).forEach((slab, index) => {
    for (const item of slab.items) items.push(moved(item, left + 68 * mm, y - 20 + index * slab.heightPt));
  });
  return items;
}

/** A line with a tick at each millimetre, longer at five and ten. */
export function ruler(x: number, y: number, lengthMm: number, isAcross: boolean): Item[] {
  const mm = pointsPerMm;
  const at = (along: number, out: number): readonly [number, number] =>
    isAcross ? [x + along * mm, y - out * mm] : [x + out * mm, y + along * mm];
  const items: Item[] = [{ kind: 'line', points: [at(0, 0), at(lengthMm, 0)], widthPt: 0.4 }];
  for (let along = 0; along <= lengthMm; along += 1)
    items.push({
      kind: 'line',
      points: [at(along, 0), at(along, along % 10 === 0 ? 3 : along % 5 === 0 ? 2.2 : 1.4)],
      widthPt: 0.25,
    });
  return items;
}
