import decode from 'qr/decode.js';
import { expect, test } from 'vitest';
import { documentSet } from '../../src/documents/document-set.ts';
import { demoPlan, press, subjectOf } from './press.ts';
import { canRasterise, rasterise } from './print/rasterise.ts';

test.skipIf(!canRasterise)(
  'the code on the back of a rasterised card reads back as plan check, revision and channels',
  async () => {
    const subject = await subjectOf(demoPlan.replace('size: id-1', 'size: a7\n  qr: true'));
    const { files, flaws } = await documentSet(subject, press());
    expect(flaws).toEqual([]);
    const cards = files.get('cards.pdf');
    if (cards === undefined) throw new Error('no cards');
    const raster = rasterise(cards, 2, 300 / 72);
    // Inez lies at the top left of the back; the code stands in the lower half of her card.
    const [left, top, width, height] = [
      0,
      Math.round(raster.height * 0.28),
      raster.width / 2,
      raster.height * 0.2,
    ].map(Math.round) as [number, number, number, number];
    const data = new Uint8Array(width * height * 4);
    for (let y = 0; y < height; y += 1)
      for (let x = 0; x < width; x += 1)
        data.fill(raster.at(left + x, top + y), (y * width + x) * 4, (y * width + x) * 4 + 4);
    const text = decode({ width, height, data });
    expect(text).toMatch(new RegExp(`^READBACK ${subject.check} R3/`));
    // As the plan has them: the Gap repeater with its tone, and the weather channel to be heard only.
    expect(text.split('/')).toContain('1 146.94-0.6 T100.0');
    expect(text.split('/')).toContain('9 162.55 RX');
    // The 45 characters of the alphanumeric mode (ISO/IEC 18004).
    expect(text).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
  },
);
