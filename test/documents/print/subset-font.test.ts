import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import type { FontName } from '../../../src/documents/print/fonts.ts';
import { subsetFont } from '../../../src/documents/print/subset-font.ts';
import { unpackWoff } from '../../../src/documents/print/unpack-woff.ts';
import { fontBytes } from './real-fonts.ts';

interface Parsed {
  readonly numGlyphs: number;
  glyphForCodePoint(codePoint: number): { readonly id: number };
  getGlyph(id: number): {
    readonly advanceWidth: number;
    readonly path: { toSVG(): string };
  };
}

/** fontkit, which pdfkit brings along: a reader of fonts that knows nothing of ours. */
function parsed(file: Uint8Array): Parsed {
  const document = new PDFDocument({ autoFirstPage: false, font: '' });
  document.font(Buffer.from(file));
  return (document as unknown as { _font: { font: Parsed } })._font.font;
}

describe.each(['regular', 'mono-bold', 'fallback'] as const)('%s', (name: FontName) => {
  const file = unpackWoff(fontBytes[name]());
  const before = parsed(file);
  // Letters with accents are composed of others.
  const kept = [...'A0é½ß'].map((letter) => before.glyphForCodePoint(letter.codePointAt(0) ?? 0).id);
  const cut = subsetFont(file, kept);

  it('glyphs keep their numbers, outlines and widths', () => {
    const after = parsed(cut);
    for (const id of [0, ...kept]) {
      expect(after.getGlyph(id).path.toSVG()).toBe(before.getGlyph(id).path.toSVG());
      expect(after.getGlyph(id).advanceWidth).toBe(before.getGlyph(id).advanceWidth);
    }
    expect(before.getGlyph(kept[0] ?? 0).path.toSVG()).not.toBe('');
    expect(cut.length).toBeLessThan(file.length / 2);
  });

  it('the sum of the whole file is the number that its head makes it', () => {
    // OpenType 1.9, "Calculating checksums": 0xB1B0AFBA.
    const view = new DataView(cut.buffer, cut.byteOffset, cut.byteLength);
    let sum = 0;
    for (let at = 0; at < cut.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    expect(sum).toBe(0xb1b0afba);
  });

  it('the font that it was cut from stays as it was', () => {
    expect(Buffer.from(file).equals(Buffer.from(unpackWoff(fontBytes[name]())))).toBe(true);
    expect(Buffer.from(subsetFont(file, kept)).equals(Buffer.from(cut))).toBe(true);
  });
});
