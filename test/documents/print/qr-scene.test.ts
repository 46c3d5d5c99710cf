import decode from 'qr/decode.js';
import { describe, expect, it } from 'vitest';
import { openFonts } from '../../../src/documents/print/fonts.ts';
import { layOut } from '../../../src/documents/print/lay-out.ts';
import { measureWith } from '../../../src/documents/print/measure.ts';
import { paint } from '../../../src/documents/print/paint.ts';
import { qrScene } from '../../../src/documents/print/qr-scene.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';
import { canRasterise, rasterise } from './rasterise.ts';
import { fontBytes } from './real-fonts.ts';

// 62 bytes: the most a version 4 code holds at level M (ISO/IEC 18004, by ten public encoders).
const text = 'https-free: 1 GAP 146.940-0.600 100.0; 2 KNOB 444.800+5.000 K7';

it('a code of version 4 with its quiet zone is 41 modules wide', async () => {
  expect(Buffer.byteLength(text)).toBe(62);
  expect((await qrScene(text, 'code')).widthMm).toBeCloseTo((41 * 5 * 25.4) / 300, 6);
});

it('a code leaves a white border of four modules', async () => {
  const { shapes, widthMm } = await qrScene(text, 'code');
  const all = shapes.flatMap((shape) => (shape.kind === 'polygon' ? shape.points.flat() : []));
  expect(Math.min(...all)).toBeCloseTo((4 * 5 * 25.4) / 300, 6);
  expect(Math.max(...all)).toBeCloseTo(widthMm - (4 * 5 * 25.4) / 300, 6);
});

describe.skipIf(!canRasterise)('rasterised (needs pdftoppm of poppler-utils)', () => {
  it('the code on the back of a bank-size card is read back from the page as printed at 300 dpi', async () => {
    const fonts = await openFonts(fontBytes);
    const markup =
      '<cards title="C" language="en" paper="A4" card="id-1" flip="long-edge"><card id="a"><front><p>front</p></front><back><figure name="qr"/></back></card></cards>';
    const laid = layOut(
      readContent(markup, new Map([['qr', await qrScene(text, 'The channel list')]])),
      measureWith(fonts),
    );
    expect(laid.overflows).toEqual([]);
    const raster = rasterise(await paint(laid, { fonts, date: new Date(0) }), 2, 300 / 72);
    // The card of the first slot, as a reader frames it.
    const [left, top, wide, high] = [Math.round(raster.width / 2), 60, Math.round(raster.width / 2), 700];
    const data = new Uint8Array(wide * high * 4).fill(255);
    for (let y = 0; y < high; y += 1)
      for (let x = 0; x < wide; x += 1)
        data.fill(raster.at(left + x, top + y), (y * wide + x) * 4, (y * wide + x) * 4 + 3);
    expect(decode({ width: wide, height: high, data })).toBe(text);
  });
});
