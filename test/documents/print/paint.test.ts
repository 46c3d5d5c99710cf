import { extractText, getDocumentProxy } from 'unpdf';
import { beforeAll, describe, expect, it } from 'vitest';
import { openFonts } from '../../../src/documents/print/fonts.ts';
import { layOut } from '../../../src/documents/print/lay-out.ts';
import { type Measure, measureWith } from '../../../src/documents/print/measure.ts';
import type { Item, LaidOut, TextItem } from '../../../src/documents/print/page.ts';
import { paint } from '../../../src/documents/print/paint.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';
import { packedObjects } from './packed-objects.ts';
import { canRasterise, inkIn, rasterise } from './rasterise.ts';
import { fontBytes } from './real-fonts.ts';

const date = new Date(Date.UTC(2026, 11, 1));
let fonts: Awaited<ReturnType<typeof openFonts>>;
let measure: Measure;
beforeAll(async () => {
  fonts = await openFonts(fontBytes);
  measure = measureWith(fonts);
});

const scene = {
  widthMm: 40,
  heightMm: 10,
  alt: 'A day with a check-in at 19:00',
  shapes: [
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
      fill: 0,
    },
    { kind: 'words', x: 25, y: 6, text: '19:00', sizePt: 10, align: 'center' },
  ],
} as const;

const markup = `<document title="A &amp; B &lt;x&gt;" language="en" paper="A4" size="10">
  <running-foot>Page <page/> of <pages/></running-foot>
  <section><heading level="1">Channel list</heading><p>Call <code>KX9OO0</code> on <b>slot <num>10</num></b>; Łódź → ≥ ☐. <mark shape="ring" says="listen only"/></p>
  <list><item>first <tick/></item><item>second <blank mm="30"/></item></list>
  <figure name="day">The day</figure>
  <table caption="All"><column align="decimal"/><column/><head><row><cell>MHz</cell><cell>Name</cell></row></head><row><cell><num>146.940</num></cell><cell heading="yes">Gap</cell></row><row><cell span="2"></cell></row></table></section></document>`;
const laid = (text = markup): LaidOut => layOut(readContent(text, new Map([['day', scene]])), measure);
const textsOf = (items: readonly Item[]): TextItem[] =>
  items.flatMap((item) => (item.kind === 'text' ? [item] : item.kind === 'group' ? textsOf(item.items) : []));

it('the same pages and date give the same bytes, also with fonts opened anew', async () => {
  const once = await paint(laid(), { fonts, date });
  const again = await openFonts(fontBytes);
  const twice = await paint(layOut(readContent(markup, new Map([['day', scene]])), measureWith(again)), {
    fonts: again,
    date,
  });
  expect(Buffer.from(once).equals(Buffer.from(twice))).toBe(true);
});

it('the words can be read back from the file, in reading order', async () => {
  const { text } = await extractText(await getDocumentProxy(await paint(laid(), { fonts, date })), {
    mergePages: true,
  });
  const found = text.replace(/\s+/g, ' ');
  for (const words of ['Channel list', 'Call KX9OO0 on slot 10 ; Łódź → ≥ ☐.', '146.940', 'Page 1 of 1'])
    expect(found).toContain(words.replace(' ;', ';'));
});

it('the parts of the document are tagged with their meaning', async () => {
  const page = await (await getDocumentProxy(await paint(laid(), { fonts, date }))).getPage(1);
  const roles: string[] = [];
  const alts: string[] = [];
  const walk = (node: unknown): void => {
    const { role, alt, children } = node as { role?: string; alt?: string; children?: unknown[] };
    if (role !== undefined) roles.push(role);
    if (alt !== undefined) alts.push(alt);
    for (const child of children ?? []) walk(child);
  };
  walk(await page.getStructTree());
  for (const role of [
    'Document',
    'Sect',
    'H1',
    'P',
    'L',
    'LI',
    'Lbl',
    'LBody',
    'Figure',
    'Caption',
    'Table',
    'TR',
    'TH',
    'TD',
  ])
    expect(roles).toContain(role);
  expect(alts).toEqual(['listen only', scene.alt]);
});

it('the file names its title, language and marks, and asks not to be scaled', async () => {
  const pdf = Buffer.from(await paint(laid(), { fonts, date, subject: 'Revision 3 & check' })).toString(
    'latin1',
  );
  for (const part of [
    '/Lang (en)',
    '/DisplayDocTitle true',
    '/PrintScaling /None',
    '/Marked true',
    '<pdfaid:part>2',
    '<pdfuaid:part>1',
    'A &amp; B &lt;x&gt;</rdf:li>',
    '(A & B <x>)',
    'Revision 3 &amp; check',
  ])
    expect(pdf).toContain(part);
  const parts = [...packedObjects(Buffer.from(pdf, 'latin1')).values()].join('\n');
  for (const part of ['/Scope/Column', '/Scope/Row', '/ColSpan 2']) expect(parts).toContain(part);
  // All fonts lie in the file; none of the fourteen that viewers bring along is asked for.
  expect(pdf).not.toMatch(/\/Subtype \/Type1\b/);
  expect(pdf.match(/\/FontFile2/g)?.length).toBe(
    new Set(laid().pages.flatMap((page) => textsOf(page.items).map((item) => item.font))).size,
  );
});

it('a figure states where it lies, also on a card that lies on its side', async () => {
  const boxes = async (text: string): Promise<number[]> => {
    const parts = [...packedObjects(await paint(laid(text), { fonts, date })).values()].join('\n');
    return (/\/BBox\[([^\]]*)\]/.exec(parts)?.[1] ?? '').split(' ').map(Number);
  };
  const board = { widthPt: 40 * (72 / 25.4), heightPt: 10 * (72 / 25.4) };
  const [left = 0, bottom = 0, right = 0, top = 0] = await boxes(markup);
  // The figure stands in the middle of A4; its black square begins at its left edge and is as high as it is.
  expect(left).toBeCloseTo((595.276 - board.widthPt) / 2, 1);
  expect(top - bottom).toBeCloseTo(board.heightPt, 1);
  expect(right).toBeLessThan(left + board.widthPt);
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = await boxes(
    '<cards title="C" language="en" paper="Letter" card="a6" flip="long-edge"><card id="a"><front><figure name="day"/></front><back></back></card></cards>',
  );
  expect(x2 - x1).toBeCloseTo(board.heightPt, 1);
  expect(y2 - y1).toBeGreaterThan(x2 - x1);
});

it('a stroke tells each zero from the letter O', () => {
  const code = textsOf(laid().pages[0]?.items ?? []).find((item) => item.text.includes('KX9OO0'));
  expect(code?.zeros.length).toBe(1);
});

it('digits of the text face have one width, so that columns of figures line up', () => {
  for (const font of ['regular', 'bold', 'mono', 'mono-bold'] as const)
    expect(new Set([...'0123456789'].map((digit) => measure.widthEm(digit, font).toFixed(6))).size).toBe(1);
});

it('capitals and figures of 8 pt stand 16 minutes of arc high at 40 cm', () => {
  // ISO 9241-3 asks for at least 16 minutes of arc, measured on the capital letter (second-hand).
  for (const font of ['regular', 'bold', 'mono', 'mono-bold'] as const) {
    const heightMm = (measure.heights(font).capHeight * 8 * 25.4) / 72;
    expect((2 * Math.atan(heightMm / 2 / 400) * 180 * 60) / Math.PI).toBeGreaterThanOrEqual(16);
  }
});

describe.skipIf(!canRasterise)('rasterised (needs pdftoppm of poppler-utils)', () => {
  const perPoint = 4;

  it('there is ink where each text should be, and black on white', async () => {
    const pages = laid();
    const raster = rasterise(await paint(pages, { fonts, date }), 1, perPoint);
    const items = textsOf(pages.pages[0]?.items ?? []).filter((item) => item.text.trim() !== '');
    expect(items.length).toBeGreaterThan(8);
    for (const item of items) {
      const box = {
        left: item.x - 0.5,
        right: item.x + item.widthPt + 0.5,
        top: item.y - 0.8 * item.sizePt,
        bottom: item.y + 0.25 * item.sizePt,
      };
      const area = (box.right - box.left) * (box.bottom - box.top) * perPoint ** 2;
      expect(inkIn(raster, perPoint, box) / area, item.text).toBeGreaterThan(
        /[A-Za-z0-9]/.test(item.text) ? 0.04 : 0.01,
      );
    }
    expect(raster.at(2, 2)).toBe(255);
    const darkest = Math.min(
      ...Array.from({ length: raster.width }, (_, x) =>
        raster.at(x, Math.round(((items[0]?.y ?? 0) - 3) * perPoint)),
      ),
    );
    expect(darkest).toBe(0);
  });

  it('the zero has ink in its middle and the letter O has none', async () => {
    const pages = laid(
      '<document title="T" language="en" paper="A4" size="20"><p>0</p><p>O</p><p><code>0</code></p><p><code>O</code></p><p><b>0</b></p><p><b>O</b></p></document>',
    );
    const raster = rasterise(await paint(pages, { fonts, date }), 1, perPoint);
    const middles = textsOf(pages.pages[0]?.items ?? []).map((item) => {
      const [x, y] = [item.x + item.widthPt / 2, item.y - 0.375 * item.sizePt];
      return inkIn(raster, perPoint, { left: x - 1, right: x + 1, top: y - 1, bottom: y + 1 }) > 0;
    });
    expect(middles).toEqual([true, false, true, false, true, false]);
  });

  it('no ink lies outside the cards and their marks, and both sides show their own text', async () => {
    const cards = layOut(
      readContent(
        '<cards title="C" language="en" paper="Letter" card="a6" flip="short-edge"><card id="a"><front><p size="huge">FRONT</p></front><back><p size="huge">BACK</p></back></card></cards>',
      ),
      measure,
    );
    const pdf = await paint(cards, { fonts, date });
    const slot = cards.pages[0]?.items.find((item) => item.kind === 'group');
    if (slot?.kind !== 'group') throw new Error('no card');
    // The A6 card lies on its side: its text begins at the top right of its place and runs down.
    const middle = { x: slot.x + slot.widthPt / 2, y: slot.y + slot.heightPt / 2 };
    const raster = rasterise(pdf, 1, perPoint);
    const strip = {
      left: middle.x + slot.heightPt / 2 - 40,
      right: middle.x + slot.heightPt / 2,
      top: middle.y - slot.widthPt / 2,
      bottom: middle.y,
    };
    expect(inkIn(raster, perPoint, strip)).toBeGreaterThan(500);
    expect(
      inkIn(raster, perPoint, { ...strip, left: middle.x - slot.heightPt / 2 + 1, right: middle.x }),
    ).toBe(0);
    const { text } = await extractText(await getDocumentProxy(pdf));
    expect(text.map((page) => page.includes('BACK'))).toEqual([false, true]);
  });
});
