/**
 * A sheet that measures how far a printer sets the back away from the front. The front has fine crosses,
 * the back scales at the same spots; held against the light, each line of a cross shows on its scale by how
 * many millimetres the back came out too far to the right or too low. These two figures are what
 * {@link ./impose.ts} takes as `backOffsetMm`. A ruler shows whether the printer kept the scale.
 */

import { sheetMarginMm } from './card-format.ts';
import type { Flip, PaperName } from './content.ts';
import type { Imposition } from './impose.ts';
import { papers } from './lay-out.ts';
import { layText, stack } from './lay-text.ts';
import type { Measure } from './measure.ts';
import { type Item, type LaidOut, moved } from './page.ts';
import { setDown } from './set-down.ts';
import { ruler } from './sheet-marks.ts';
import { addNode, pointsPerMm as mm, newNotes, type Setting } from './slab.ts';

/** The words on the sheet; how to use it is said on the side it is about. */
export interface TestSheet {
  readonly title: string;
  readonly language: string;
  readonly paper: PaperName;
  readonly flip: Flip;
  readonly front: string;
  readonly back: string;
}

/** Scales run this far to either side of zero. */
const reachMm = 5;

export function layTestSheet(sheet: TestSheet, measure: Measure, imposition: Imposition = {}): LaidOut {
  const paper = papers[sheet.paper];
  const notes = newNotes();
  const setting: Setting = {
    measure,
    sizePt: 10,
    leastPt: 8,
    leading: 1.3,
    gapEm: 0,
    cellPadEm: 0,
    headingSizes: [1, 1, 1, 1],
    notes,
    cuts: new Map(),
  };
  const root = addNode(setting, 'Document', undefined);
  const spots = [0.15, 0.85].flatMap((across) =>
    [0.12, 0.5, 0.88].map((down) => [across * paper.widthPt, down * paper.heightPt] as const),
  );
  const { right, down } = imposition.backOffsetMm ?? { right: 0, down: 0 };

  const front = [
    ...spots.flatMap(([x, y]) => cross(x, y)),
    ...ruler(paper.widthPt / 2 - 50 * mm, paper.heightPt * 0.7, 100, true),
    ...label('100 mm', paper.widthPt / 2 + 51 * mm, paper.heightPt * 0.7, 'start', setting),
    ...edge(paper),
    ...words(sheet.front, paper, setting, root),
  ];
  const back = [
    ...spots
      .map(([x, y]) =>
        sheet.flip === 'long-edge' ? ([paper.widthPt - x, y] as const) : ([x, paper.heightPt - y] as const),
      )
      .flatMap(([x, y]) => scales(x, y, setting)),
    ...words(sheet.back, paper, setting, root),
  ].map((item) => moved(item, -right * mm, -down * mm));

  return {
    title: sheet.title,
    language: sheet.language,
    pages: [front, back].map((items) => ({ ...paper, items })),
    structure: notes.structure,
    outline: [],
    flip: sheet.flip,
    overflows: notes.overflows,
    missing: [...notes.missing].map(([character, text]) => ({ character, text })),
    smallestPt: notes.smallest,
  };
}

function cross(x: number, y: number): Item[] {
  const arm = (reachMm + 4) * mm;
  return [
    {
      kind: 'line',
      points: [
        [x - arm, y],
        [x + arm, y],
      ],
      widthPt: 0.5,
    },
    {
      kind: 'line',
      points: [
        [x, y - arm],
        [x, y + arm],
      ],
      widthPt: 0.5,
    },
  ];
}

/**
 * Two scales through the spot. A back that came out too far to the right carries its scale with it, so the
 * line of the front falls to the left of zero: the figures grow to the left, and upwards.
 */
function scales(x: number, y: number, setting: Setting): Item[] {
  const items: Item[] = [];
  const tick = (alongMm: number, isAcross: boolean): void => {
    const long = alongMm % 4 === 0 ? 3.5 : alongMm % 1 === 0 ? 2.5 : 1.5;
    const at = alongMm * mm;
    const [from, to] = isAcross
      ? ([
          [x - at, y - reachMm * mm - long * mm],
          [x - at, y - reachMm * mm],
        ] as const)
      : ([
          [x - reachMm * mm - long * mm, y - at],
          [x - reachMm * mm, y - at],
        ] as const);
    items.push({ kind: 'line', points: [from, to], widthPt: alongMm === 0 ? 0.6 : 0.25 });
    if (alongMm % 4 !== 0) return;
    const figure = alongMm < 0 ? `−${-alongMm}` : String(alongMm);
    items.push(
      ...(isAcross
        ? label(figure, from[0], from[1] - 2, 'center', setting)
        : label(figure, from[0] - 2, from[1] + 3, 'end', setting)),
    );
  };
  for (let along = -reachMm; along <= reachMm; along += 0.5) {
    tick(along, true);
    tick(along, false);
  }
  return items;
}

/** Where the area begins that the cards keep to: a printer that leaves part of this out cannot print them. */
function edge(paper: { readonly widthPt: number; readonly heightPt: number }): Item[] {
  const at = sheetMarginMm * mm;
  const [right, bottom] = [paper.widthPt - at, paper.heightPt - at];
  return [
    {
      kind: 'polygon',
      points: [
        [at, at],
        [right, at],
        [right, bottom],
        [at, bottom],
      ],
      strokePt: 0.4,
    },
  ];
}

function label(
  text: string,
  x: number,
  y: number,
  align: 'start' | 'center' | 'end',
  setting: Setting,
): Item[] {
  const [slab] = layText(
    [{ kind: 'text', text, strong: false, code: false, whole: true }],
    100,
    8,
    { ...setting, leading: 1 },
    { align, what: 'a label' },
  );
  const dx = align === 'center' ? -50 : align === 'end' ? -100 : 0;
  const items: Item[] = [];
  setDown(slab?.parts ?? [], x + dx, y, 0, setting.measure, items);
  return items.map((item) => (item.kind === 'text' ? { ...item, y } : item));
}

function words(
  text: string,
  paper: { readonly widthPt: number; readonly heightPt: number },
  setting: Setting,
  root: number,
): Item[] {
  const width = paper.widthPt * 0.5;
  const node = addNode(setting, 'P', root);
  const slabs = layText(
    [{ kind: 'text', text, strong: false, code: false, whole: false }],
    width,
    setting.sizePt,
    setting,
    { node, what: 'the words of the test sheet' },
  );
  const items: Item[] = [];
  setDown(stack(slabs).parts, paper.widthPt * 0.25, paper.heightPt * 0.25, 0, setting.measure, items);
  return items;
}
