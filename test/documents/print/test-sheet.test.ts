import { expect, it } from 'vitest';
import { papers } from '../../../src/documents/print/lay-out.ts';
import type { LineItem, Page } from '../../../src/documents/print/page.ts';
import { layTestSheet } from '../../../src/documents/print/test-sheet.ts';
import { equalWidths } from './equal-widths.ts';

const mm = 72 / 25.4;
const sheet = {
  title: 'Test',
  language: 'en',
  paper: 'A4',
  front: 'Print both sides.',
  back: 'Read here.',
} as const;
const lines = (page: Page | undefined): LineItem[] =>
  (page?.items ?? []).filter((item): item is LineItem => item.kind === 'line');

/** The middles of the crosses of the front: each has a level and an upright line of 18 mm. */
function crosses(page: Page | undefined): (readonly [number, number])[] {
  return lines(page).flatMap((line) => {
    const [[x1, y1] = [0, 0], [x2, y2] = [0, 0]] = line.points;
    return y1 === y2 && Math.abs(x2 - x1 - 18 * mm) < 0.01 ? [[(x1 + x2) / 2, y1] as const] : [];
  });
}

it.each(['long-edge', 'short-edge'] as const)(
  'turned on the %s, every cross falls on the zero of its scale',
  (flip) => {
    const { pages } = layTestSheet({ ...sheet, flip }, equalWidths);
    const zeros = lines(pages[1]).filter((line) => line.widthPt === 0.6);
    const spots = crosses(pages[0]);
    expect(spots.length).toBe(6);
    for (const [x, y] of spots) {
      const [seenX, seenY] = flip === 'long-edge' ? [papers.A4.widthPt - x, y] : [x, papers.A4.heightPt - y];
      expect(zeros.some((line) => line.points.every(([at]) => Math.abs(at - seenX) < 0.001))).toBe(true);
      expect(zeros.some((line) => line.points.every(([, at]) => Math.abs(at - seenY) < 0.001))).toBe(true);
    }
  },
);

it('the figure under the line is what sets the back right again', () => {
  // A printer that sets the back 4 mm to the right: the line of the front then meets what stands 4 mm left of zero.
  const { pages } = layTestSheet({ ...sheet, flip: 'long-edge' }, equalWidths);
  const [x = 0, y = 0] = crosses(pages[0])[0] ?? [];
  const figures = (pages[1]?.items ?? []).flatMap((item) =>
    item.kind === 'text' && /^−?\d$/.test(item.text) ? [item] : [],
  );
  const met = papers.A4.widthPt - x - 4 * mm;
  const under = figures.find(
    (item) => Math.abs(item.x + item.widthPt / 2 - met) < 0.01 && Math.abs(item.y - y) < 12 * mm,
  );
  expect(under?.text).toBe('4');
  const mended = layTestSheet({ ...sheet, flip: 'long-edge' }, equalWidths, {
    backOffsetMm: { right: 1, down: 0 },
  });
  const zero = (page: Page | undefined): number =>
    lines(page).find((line) => line.widthPt === 0.6)?.points[0]?.[0] ?? 0;
  expect(zero(mended.pages[1]) - zero(pages[1])).toBeCloseTo(-mm, 6);
});
