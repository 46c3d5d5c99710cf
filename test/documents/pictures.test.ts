/**
 * Pages as they look, held against pictures that somebody has looked at. `ACCEPT=1` writes them anew; a few
 * pixels may differ, since another version of the rasteriser draws edges a little otherwise.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
import { behind, cardFormats, gridOf } from '../../src/documents/print/card-format.ts';
import { papers } from '../../src/documents/print/lay-out.ts';
import { germanPlan } from './german-plan.ts';
import { type Picture, readPng, writePng } from './png.ts';
import { demoPlan, press, subjectOf } from './press.ts';
import { canRasterise, rasterise } from './print/rasterise.ts';

const folder = new URL('../golden/pictures/', import.meta.url);
/** Share of pixels that may differ by more than a quarter of the scale. */
const tolerance = 0.004;

let demo: ReadonlyMap<string, Uint8Array>;
let german: ReadonlyMap<string, Uint8Array>;
let large: ReadonlyMap<string, Uint8Array>;

describe.skipIf(!canRasterise)('accepted pictures', () => {
  beforeAll(async () => {
    demo = (await documentSet(await subjectOf(demoPlan, true), press())).files;
    german = (await documentSet(await subjectOf(germanPlan), press('de'))).files;
    const a7 = demoPlan.replace('size: id-1', 'size: a7\n  qr: true');
    large = (await documentSet(await subjectOf(a7), press())).files;
  }, 60_000);

  test.each([
    ['cards-front', () => page(demo, 'cards.pdf', 1)],
    ['cards-back', () => page(demo, 'cards.pdf', 2)],
    ['cards-a7-front', () => page(large, 'cards.pdf', 1)],
    ['cards-a7-back', () => page(large, 'cards.pdf', 2)],
    ['cards-german', () => page(german, 'cards.pdf', 1)],
    ['guest-card', () => page(demo, 'guest-card.pdf', 2)],
    ['worksheet', () => page(demo, 'worksheets/mobile.pdf', 1)],
    ['booklet-title', () => page(demo, 'booklet.pdf', 1)],
    ['booklet-check-ins', () => page(demo, 'booklet.pdf', 4)],
    ['booklet-profiles', () => page(demo, 'booklet.pdf', 11)],
    ['card', oneCard],
  ] as const)('%s looks as it did when somebody looked at it', (name, draw) => {
    const now = draw();
    const file = new URL(`${name}.png`, folder);
    if (process.env['ACCEPT'] === '1') {
      mkdirSync(folder, { recursive: true });
      const bytes = writePng(now);
      expect(bytes.length).toBeLessThan(200_000);
      writeFileSync(file, bytes);
      return;
    }
    const then = readPng(readFileSync(file));
    expect([now.width, now.height]).toEqual([then.width, then.height]);
    const differing = now.greys.reduce(
      (count, grey, index) => count + (Math.abs(grey - (then.greys[index] ?? 0)) > 64 ? 1 : 0),
      0,
    );
    expect(
      differing / now.greys.length,
      'If this is meant, run `npm run accept` and look at the picture.',
    ).toBeLessThan(tolerance);
  });
});

function page(files: ReadonlyMap<string, Uint8Array>, path: string, number: number): Picture {
  const raster = rasterise(files.get(path) ?? new Uint8Array(), number, 1);
  return crop(raster, { left: 0, top: 0, width: raster.width, height: raster.height });
}

/** Front and back of one card side by side, at twice its size on a screen. */
function oneCard(): Picture {
  const perPoint = 2.2;
  const slot = gridOf(cardFormats['id-1'], papers.Letter).slots[1];
  if (slot === undefined) throw new Error('a sheet holds more than one card');
  const pdf = demo.get('cards.pdf') ?? new Uint8Array();
  const [front, back] = [slot, behind(slot, papers.Letter, 'long-edge')].map((at, index) =>
    crop(rasterise(pdf, index + 1, perPoint), {
      left: Math.round(at.x * perPoint),
      top: Math.round(at.y * perPoint),
      width: Math.round(at.widthPt * perPoint),
      height: Math.round(at.heightPt * perPoint),
    }),
  ) as [Picture, Picture];
  return sideBySide(framed(front), framed(back));
}

function crop(
  raster: { at(x: number, y: number): number },
  box: { left: number; top: number; width: number; height: number },
): Picture {
  const greys = new Uint8Array(box.width * box.height);
  for (let y = 0; y < box.height; y += 1)
    for (let x = 0; x < box.width; x += 1) greys[y * box.width + x] = raster.at(box.left + x, box.top + y);
  return { width: box.width, height: box.height, greys };
}

/** A thin grey edge, which is where the paper ends. */
function framed(picture: Picture): Picture {
  const greys = picture.greys.slice();
  const { width, height } = picture;
  for (let x = 0; x < width; x += 1) for (const y of [0, height - 1]) greys[y * width + x] = 140;
  for (let y = 0; y < height; y += 1) for (const x of [0, width - 1]) greys[y * width + x] = 140;
  return { width, height, greys };
}

function sideBySide(left: Picture, right: Picture): Picture {
  const gap = 14;
  const [width, height] = [left.width + gap + right.width, Math.max(left.height, right.height)];
  const greys = new Uint8Array(width * height).fill(255);
  for (let y = 0; y < height; y += 1) {
    greys.set(left.greys.subarray(y * left.width, (y + 1) * left.width), y * width);
    greys.set(right.greys.subarray(y * right.width, (y + 1) * right.width), y * width + left.width + gap);
  }
  return { width, height, greys };
}
