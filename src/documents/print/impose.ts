/**
 * Cards, several to a sheet, both sides in register, ready to cut and to seal in film.
 *
 * A spot at (x, y) of the front lies at (W - x, y) of the back if the sheet turns about its vertical edge
 * and at (x, H - y) if it turns about its horizontal edge; each back is turned so that a card in the hand
 * turns like a page. The paper of an ID-1 card is smaller than ISO/IEC 7810 says by the sealed edge of the
 * film, so that the laminated card has the size of a bank card. Crop marks stand outside the trim.
 */
import {
  behind,
  type CardFormat,
  cardFormats,
  gridOf,
  panelMarginMm,
  panelRoom,
  type Slot,
  turnBehind,
} from './card-format.ts';
import type { Block, Card, CardDocument, CardSize } from './content.ts';
import { fitPanel, knownBlocks, type Room, type Trial } from './fit-panel.ts';
import type { Measure } from './measure.ts';
import { type GroupItem, type Item, moved, type Page } from './page.ts';
import { cutMarks, sheetFoot, slotName } from './sheet-marks.ts';
import { addNode, type Notes, pointsPerMm, type Setting } from './slab.ts';

export interface Imposition {
  /** What the printer sets the back too far to the right and too low, in mm, as read from its test sheet; taken back here. */
  readonly backOffsetMm?: { readonly right: number; readonly down: number };
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
  const known = knownBlocks();
  const set = new Map<readonly Block[], Trial>();
  const side = (card: Card, name: 'front' | 'back', left = margin): readonly Item[] =>
    fitPanel(
      {
        what: `card ${card.id}, ${name}`,
        blocks: card[name],
        room,
        left,
        top: margin,
        known,
        // Fronts bear names; the backs of members with the same radios and rights are the same.
        ...(name === 'back' && { set }),
      },
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
        fronts.push(...slotName(slot, card.id, measure, format));
        return;
      }
      const front = side(card, 'front');
      const back = side(card, 'back');
      const reverse = behind(slot, paper, content.flip);
      fronts.push(
        group(slot, front, format, grid.turned ? 90 : 0),
        ...cutMarks(slot, format, grid.turned),
        ...slotName(slot, card.id, measure, format),
      );
      backs.push(
        group(reverse, back, format, turnBehind(grid.turned, content.flip)),
        ...slotName(reverse, card.id, measure, format),
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
