import { expect, test } from 'vitest';
import { type FontName, openFonts } from '../../../src/documents/print/fonts.ts';
import { fontBytes } from './real-fonts.ts';

const letters = [
  ...Array.from({ length: 95 }, (_, index) => 0x20 + index),
  ...[...'äöüßéŁłřČ–…„“’'].map((letter) => letter.codePointAt(0) ?? 0),
].filter((code) => code < 0x250);

test.each(['regular', 'bold', 'mono', 'fallback', 'fallback-bold'] satisfies FontName[])(
  'pairs of letters in %s stand as far apart as the own layout of fontkit sets them',
  async (name) => {
    const font = (await openFonts(fontBytes)).font(name);
    const held = letters.filter((code) => font.has(code));
    const wrong: string[] = [];
    for (const left of held)
      for (const right of held) {
        const pair = String.fromCodePoint(left, right);
        const { positions } = font.source.layout(pair);
        const [first] = positions;
        // A ligature is one glyph; its parts are set apart here.
        if (first === undefined || positions.length < 2) continue;
        const expected = first.xAdvance / font.source.unitsPerEm - font.glyph(left).advance;
        if (Math.abs(font.kern(left, right) - expected) > 1e-6)
          wrong.push(`${pair} ${font.kern(left, right)} instead of ${expected}`);
      }
    expect(wrong.slice(0, 10)).toEqual([]);
  },
  60_000,
);
