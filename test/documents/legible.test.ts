/**
 * What can be measured of whether a card is read: sizes, black on white, nothing over anything else or over the
 * edge. The bounds are those of src/documents/README.md.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { gatherCards } from '../../src/documents/cards.ts';
import { cardFormats, panelMarginMm } from '../../src/documents/print/card-format.ts';
import type { CardSize } from '../../src/documents/print/content.ts';
import { openFonts } from '../../src/documents/print/fonts.ts';
import { layOut } from '../../src/documents/print/lay-out.ts';
import type { GroupItem, LaidOut, TextItem } from '../../src/documents/print/page.ts';
import { printerFor } from '../../src/documents/printer.ts';
import { english } from '../../src/documents/words.ts';
import { press, subjectOf } from './press.ts';
import { canRasterise, rasterise } from './print/rasterise.ts';
import { fontBytes } from './print/real-fonts.ts';

const mm = 72 / 25.4;
const plans = new URL('../../plans/', import.meta.url);
const names = readdirSync(plans).filter((name) => name.endsWith('.yaml'));
const sizes = Object.keys(cardFormats) as CardSize[];

describe.each(names)('cards of plans/%s', (name) => {
  const laid = new Map<CardSize, LaidOut>();
  let ownSize: CardSize = 'id-1';
  let pdf = new Uint8Array();

  beforeAll(async () => {
    const text = readFileSync(new URL(name, plans), 'utf8');
    for (const size of sizes) {
      const { plan, law, consequences, check } = await subjectOf(text);
      ownSize = plan.cards.size;
      const sized = { ...plan, cards: { ...plan.cards, size } };
      const printer = await printerFor(sized, press());
      const content = printer.content('cards.hbs', gatherCards(sized, law, consequences, check, english));
      laid.set(size, layOut(content, printer.measure));
      if (size === ownSize) pdf = (await printer.pdf(content, ['cards'])).bytes.slice();
    }
  }, 60_000);

  const boards = (): { size: CardSize; group: GroupItem }[] =>
    [...laid].flatMap(([size, { pages }]) =>
      pages.flatMap((page) =>
        page.items.flatMap((item) => (item.kind === 'group' ? [{ size, group: item }] : [])),
      ),
    );
  const texts = (group: GroupItem): TextItem[] =>
    group.items.flatMap((item) => (item.kind === 'text' && item.text.trim() !== '' ? [item] : []));

  test('no type is below 8 points, whose capitals are 16 minutes of arc tall at 400 mm', async () => {
    const { capHeight } = (await openFonts(fontBytes)).font('regular');
    // Height for 16 minutes of arc at 400 mm: 400 mm × 16 / 3437.75 = 1.86 mm (ISO 9241-3 asks for 16 at least, second-hand).
    expect((8 * capHeight) / mm).toBeGreaterThan((400 * 16) / 3437.75);
    for (const { smallestPt } of laid.values()) expect(smallestPt).toBeGreaterThanOrEqual(8);
    for (const { group } of boards())
      for (const { sizePt } of texts(group)) expect(sizePt).toBeGreaterThanOrEqual(8);
  });

  test('everything on a card is black: contrast is that of ink on paper', () => {
    for (const { group } of boards())
      for (const item of group.items) {
        if (item.kind === 'line') expect(item.grey ?? 0).toBe(0);
        if (item.kind === 'polygon' || item.kind === 'circle') expect(item.fill ?? 0).toBe(0);
      }
  });

  test('words stand clear of the cut by more than a printer shifts its two sides', () => {
    for (const { group } of boards())
      for (const { x, y, widthPt, sizePt } of texts(group)) {
        expect(x).toBeGreaterThanOrEqual(panelMarginMm * mm - 0.1);
        expect(x + widthPt).toBeLessThanOrEqual(group.widthPt - panelMarginMm * mm + sizePt * 0.4);
        expect(y - 0.75 * sizePt).toBeGreaterThanOrEqual(panelMarginMm * mm - 0.1);
        expect(y).toBeLessThanOrEqual(group.heightPt - panelMarginMm * mm + 0.1);
      }
  });

  test('no word stands on another', () => {
    for (const { size, group } of boards()) {
      const boxes = texts(group).map((item) => ({
        item,
        left: item.x,
        right: item.x + item.widthPt - 0.1,
        top: item.y - 0.7 * item.sizePt,
        bottom: item.y + 0.05 * item.sizePt,
      }));
      boxes.forEach((one, index) => {
        for (const other of boxes.slice(index + 1)) {
          const isOver =
            one.left < other.right &&
            other.left < one.right &&
            one.top < other.bottom &&
            other.top < one.bottom;
          expect(isOver, `${size}: "${one.item.text}" on "${other.item.text}"`).toBe(false);
        }
      });
    }
  });

  test.skipIf(!canRasterise)('front and back of each card hold ink at the same place of the sheet', () => {
    const pages = laid.get(ownSize)?.pages ?? [];
    if (cardFormats[ownSize].panels === 2) return;
    const perPoint = 1;
    const [front, back] = [rasterise(pdf, 1, perPoint), rasterise(pdf, 2, perPoint)];
    const groups = (pages[0]?.items ?? []).filter((item): item is GroupItem => item.kind === 'group');
    for (const item of groups) {
      const turned = item.turn % 180 !== 0;
      const [wide, high] = turned ? [item.heightPt, item.widthPt] : [item.widthPt, item.heightPt];
      const [left, top] = [item.x + (item.widthPt - wide) / 2, item.y + (item.heightPt - high) / 2];
      const isFlippedAcross = laid.get(ownSize)?.flip === 'long-edge';
      let [onFront, onBack] = [0, 0];
      for (let y = Math.ceil(top); y < top + high - 1; y += 1)
        for (let x = Math.ceil(left); x < left + wide - 1; x += 1) {
          if (front.at(x, y) < 128) onFront += 1;
          const [bx, by] = isFlippedAcross ? [front.width - 1 - x, y] : [x, front.height - 1 - y];
          if (back.at(bx, by) < 128) onBack += 1;
        }
      expect(onFront).toBeGreaterThan(500);
      expect(onBack).toBeGreaterThan(500);
    }
  });
});
