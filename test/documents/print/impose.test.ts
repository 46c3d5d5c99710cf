import { expect, it } from 'vitest';
import { behind, cardFormats, gridOf, sheetMarginMm } from '../../../src/documents/print/card-format.ts';
import type { CardSize, Flip, PaperName } from '../../../src/documents/print/content.ts';
import { layOut, papers } from '../../../src/documents/print/lay-out.ts';
import type { GroupItem, Item, Page } from '../../../src/documents/print/page.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';
import { equalWidths } from './equal-widths.ts';

const mm = 72 / 25.4;
const sizes: readonly CardSize[] = ['id-1', 'index', 'a7', 'a6', 'fold'];
const combinations = sizes.flatMap((size) =>
  (['A4', 'Letter'] as const).flatMap((paper) =>
    (['long-edge', 'short-edge'] as const).map((flip) => ({ size, paper, flip })),
  ),
);

const sheet = (size: CardSize, paper: PaperName, flip: Flip, cards = 12, body = '<p>text</p>', more = '') =>
  readContent(
    `<cards title="C" language="en" paper="${paper}" card="${size}" flip="${flip}" ${more}><note>Print at 100 %.</note>${Array.from(
      { length: cards },
      (_, index) =>
        `<card id="m${index}"><front><p>front ${index}</p></front><back>${body}<p>back ${index}</p></back></card>`,
    ).join('')}</cards>`,
  );
const groups = (page: Page | undefined): GroupItem[] =>
  (page?.items ?? []).filter((item): item is GroupItem => item.kind === 'group');
const said = (group: GroupItem): string =>
  group.items.flatMap((item) => (item.kind === 'text' ? [item.text.trim()] : [])).join(' ');

it('a card that stands among many is set as it is when it stands alone', () => {
  const card = (who: number, words: string): string =>
    `<card id="m${who}"><front><p size="huge">${who}</p><p>${words}</p><p>${'same for all '.repeat(9)}</p><fill/><rule/></front><back><p>${words}</p></back></card>`;
  const cards = Array.from({ length: 9 }, (_, who) => card(who, 'some words '.repeat(1 + (who % 3) * 14)));
  const laid = (markup: string) =>
    layOut(
      // The mark is what a template leaves behind the name of each tag: by it the same markup is known again.
      readContent(
        `<cards title="C" language="en" paper="A4" card="id-1" flip="long-edge" from="11">${markup}</cards>`.replace(
          /<([a-z]+)/g,
          '<$1\u0001t.hbs:1\u0001',
        ),
      ),
      equalWidths,
    );
  const many = laid(cards.join(''));
  const structure = (from: typeof many, group: GroupItem) =>
    group.items.map((item) => ('node' in item ? from.structure[item.node ?? -1]?.role : undefined));
  const bare = (items: readonly Item[]) => items.map((item) => ({ ...item, node: undefined }));
  const sizes = new Set<number>();
  for (const side of [0, 1])
    groups(many.pages[side]).forEach((group, who) => {
      const alone = laid(cards[who] ?? '');
      const [same] = groups(alone.pages[side]);
      expect(bare(group.items)).toEqual(bare(same?.items ?? []));
      if (same !== undefined) expect(structure(many, group)).toEqual(structure(alone, same));
      for (const item of group.items) if (item.kind === 'text') sizes.add(item.sizePt);
    });
  expect(sizes.size).toBeGreaterThan(2);
});

it('the paper of an ID-1 card with its sealed edge has the size of a bank card', () => {
  // ISO/IEC 7810 ID-1: 85.60 by 53.98 mm; with 3 mm of film on each side the paper is 79.60 by 47.98 mm (computed).
  const { paperWidthMm, paperHeightMm, sealMm } = cardFormats['id-1'];
  expect(paperWidthMm + 2 * sealMm).toBeCloseTo(85.6, 6);
  expect(paperHeightMm + 2 * sealMm).toBeCloseTo(53.98, 6);
  expect([paperWidthMm, paperHeightMm].map((value) => value.toFixed(2))).toEqual(['79.60', '47.98']);
});

it.each([
  // ISO 216 and 3 by 5 inches; counted by hand with margins of 6.35 mm, 6 mm between papers and 11 mm at the foot.
  ['id-1', 'A4', 10],
  ['id-1', 'Letter', 8],
  ['a7', 'A4', 4],
  ['a7', 'Letter', 4],
  ['a6', 'A4', 2],
  ['a6', 'Letter', 2],
  ['index', 'A4', 4],
  ['index', 'Letter', 3],
  ['fold', 'A4', 5],
  ['fold', 'Letter', 4],
] as const)('%s cards on %s: %i on a sheet', (size, paper, count) => {
  expect(gridOf(cardFormats[size], papers[paper]).slots.length).toBe(count);
});

it.each(combinations)(
  'front and back of $size on $paper lie over each other when turned on the $flip',
  ({ size, paper, flip }) => {
    const laid = layOut(sheet(size, paper, flip), equalWidths);
    const { widthPt, heightPt } = papers[paper];
    if (size === 'fold') {
      // Fronts and backs of a fold are printed on one side, beside each other.
      for (const group of laid.pages.flatMap(groups))
        expect(said(group)).toMatch(/^front (\d+) text back \1$/);
      return;
    }
    for (let page = 0; page < laid.pages.length; page += 2) {
      for (const front of groups(laid.pages[page])) {
        // A spot of the front, seen from the back: mirrored about the edge the sheet turns on.
        const seen =
          flip === 'long-edge'
            ? { x: widthPt - front.x - front.widthPt, y: front.y }
            : { x: front.x, y: heightPt - front.y - front.heightPt };
        const back = groups(laid.pages[page + 1]).find(
          (group) => Math.abs(group.x - seen.x) < 0.001 && Math.abs(group.y - seen.y) < 0.001,
        );
        expect(back).toBeDefined();
        if (back === undefined) continue;
        expect(said(back)).toBe(said(front).replace('front', 'text back'));
        // A card turned about its own upright axis keeps its top: the top edge of both sides is the same edge of the sheet.
        const top = (turn: number): readonly [number, number] => [
          Math.round(Math.sin((turn * Math.PI) / 180)) + 0,
          Math.round(-Math.cos((turn * Math.PI) / 180)) + 0,
        ];
        const [x, y] = top(front.turn);
        expect(top(back.turn)).toEqual(flip === 'long-edge' ? [x === 0 ? 0 : -x, y] : [x, y === 0 ? 0 : -y]);
      }
    }
  },
);

it.each(combinations)(
  'nothing of $size on $paper, $flip, lies in the margin a printer leaves white',
  ({ size, paper, flip }) => {
    const edge = (sheetMarginMm - 0.01) * mm;
    const { widthPt, heightPt } = papers[paper];
    for (const page of layOut(sheet(size, paper, flip), equalWidths).pages)
      for (const [x, y] of page.items.flatMap(extent)) {
        expect(x).toBeGreaterThanOrEqual(edge);
        expect(y).toBeGreaterThanOrEqual(edge);
        expect(x).toBeLessThanOrEqual(widthPt - edge);
        expect(y).toBeLessThanOrEqual(heightPt - edge);
      }
  },
);

it.each(combinations)(
  'no crop mark of $size on $paper, $flip, lies inside a card',
  ({ size, paper, flip }) => {
    const [page] = layOut(sheet(size, paper, flip), equalWidths).pages;
    const slots = gridOf(cardFormats[size], papers[paper]).slots;
    const lines = (page?.items ?? []).filter((item) => item.kind === 'line' && item.widthPt === 0.25);
    expect(lines.length).toBeGreaterThan(8 * slots.length);
    for (const line of lines)
      for (const [x, y] of extent(line))
        expect(
          slots.some(
            (slot) =>
              x > slot.x + 0.01 &&
              x < slot.x + slot.widthPt - 0.01 &&
              y > slot.y + 0.01 &&
              y < slot.y + slot.heightPt - 0.01,
          ),
        ).toBe(false);
  },
);

it('the back is moved against the shift that was measured, and the front is left alone', () => {
  const plain = layOut(sheet('id-1', 'A4', 'long-edge', 2), equalWidths);
  const moved = layOut(sheet('id-1', 'A4', 'long-edge', 2), equalWidths, {
    backOffsetMm: { right: 1, down: -0.5 },
  });
  expect(groups(moved.pages[0])).toEqual(groups(plain.pages[0]));
  const [before, after] = [groups(plain.pages[1])[0], groups(moved.pages[1])[0]];
  expect((after?.x ?? 0) - (before?.x ?? 0)).toBeCloseTo(-mm, 6);
  expect((after?.y ?? 0) - (before?.y ?? 0)).toBeCloseTo(0.5 * mm, 6);
});

it('the slot behind a slot behind is the slot', () => {
  for (const { size, paper, flip } of combinations)
    for (const slot of gridOf(cardFormats[size], papers[paper]).slots) {
      const again = behind(behind(slot, papers[paper], flip), papers[paper], flip);
      expect(again.x).toBeCloseTo(slot.x, 6);
      expect(again.y).toBeCloseTo(slot.y, 6);
    }
});

it('a short text is set at the largest size and a long one smaller, but never below the least', () => {
  const sizeOf = (lines: number) => {
    const laid = layOut(
      sheet('id-1', 'A4', 'long-edge', 1, `<p>${'line<br/>'.repeat(lines)}end</p>`),
      equalWidths,
    );
    const [back] = groups(laid.pages[1]);
    const [text] = (back?.items ?? []).filter((item) => item.kind === 'text');
    return { sizePt: text?.sizePt, overflows: laid.overflows };
  };
  expect(sizeOf(1)).toEqual({ sizePt: 10, overflows: [] });
  const middle = sizeOf(9);
  expect(middle.sizePt).toBeLessThan(10);
  expect(middle.sizePt).toBeGreaterThanOrEqual(8);
  expect(middle.overflows).toEqual([]);
  const full = sizeOf(25);
  expect(full.sizePt).toBe(8);
  expect(full.overflows).toEqual([
    expect.objectContaining({
      what: 'card m0, back',
      wouldFit: expect.stringMatching(/^A card of size a7 holds it; or take out \d+ lines of 8 pt\.$/),
    }),
  ]);
});

it('what does not fit is never drawn outside its card, and triangles show that more was meant', () => {
  const laid = layOut(
    sheet('id-1', 'A4', 'long-edge', 1, `<p>${'line<br/>'.repeat(40)}end</p>`),
    equalWidths,
  );
  const [back] = groups(laid.pages[1]);
  expect(back?.items.filter((item) => item.kind === 'polygon' && item.points.length === 3).length).toBe(3);
  for (const [x, y] of (back?.items ?? []).flatMap(extent)) {
    expect(x >= 0 && x <= (back?.widthPt ?? 0)).toBe(true);
    expect(y >= 0 && y <= (back?.heightPt ?? 0)).toBe(true);
  }
});

function extent(item: Item): readonly (readonly [number, number])[] {
  switch (item.kind) {
    case 'text':
      return [
        [item.x, item.y - 0.75 * item.sizePt],
        [item.x + item.widthPt, item.y + item.sizePt / 4],
      ];
    case 'circle':
      return [
        [item.x - item.radiusPt, item.y - item.radiusPt],
        [item.x + item.radiusPt, item.y + item.radiusPt],
      ];
    case 'group': {
      const [wide, high] =
        item.turn % 180 === 0 ? [item.widthPt, item.heightPt] : [item.heightPt, item.widthPt];
      const [cx, cy] = [item.x + item.widthPt / 2, item.y + item.heightPt / 2];
      return [
        [cx - wide / 2, cy - high / 2],
        [cx + wide / 2, cy + high / 2],
      ];
    }
    default:
      return item.points;
  }
}
