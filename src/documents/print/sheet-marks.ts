/** What stands on a sheet of cards beside the cards: where to cut and fold, which card it is, and a ruler. */
import { type CardFormat, footMm, type Slot, sheetMarginMm } from './card-format.ts';
import type { CardDocument } from './content.ts';
import { layText } from './lay-text.ts';
import type { Measure } from './measure.ts';
import type { Item } from './page.ts';
import { setDown } from './set-down.ts';
import { newNotes, pointsPerMm, type Setting } from './slab.ts';

/** Crop marks of 0.25 pt beside each corner of the paper, the corners of the film, and the ends of the fold. */
export function cutMarks(slot: Slot, format: CardFormat, turned: boolean): Item[] {
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
export function slotName(slot: Slot, name: string, measure: Measure, format: CardFormat): Item[] {
  const sizePt = 8;
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
  const up = format.panels === 2 ? 10.5 : 9;
  // In the middle of a fold stands the mark of the fold.
  const aside = format.panels === 2 ? slot.widthPt / 4 : 0;
  const items: Item[] = [];
  setDown(line?.parts ?? [], slot.x + aside, slot.y - up, 0, measure, items);
  return items;
}

/** A ruler of 50 mm to check the scale by, and the note beside it. */
export function sheetFoot(
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
  setDown(label?.parts ?? [], left + 51 * mm, y - 8, 0, setting.measure, items);
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
    setDown(slab.parts, left + 68 * mm, y - 20 + index * slab.heightPt, 0, setting.measure, items);
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
