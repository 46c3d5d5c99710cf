import PDFDocument from 'pdfkit';
import { expect, it } from 'vitest';
import { advanceReader } from '../../../src/documents/print/font-tables.ts';
import { unpackWoff } from '../../../src/documents/print/unpack-woff.ts';
import { fontBytes } from './real-fonts.ts';

it.each(['regular', 'mono', 'fallback'] as const)('each glyph of %s advances as fontkit says', (name) => {
  const file = unpackWoff(fontBytes[name]());
  const document = new PDFDocument({ autoFirstPage: false, font: '' });
  document.font(Buffer.from(file));
  const { font } = (
    document as unknown as {
      _font: { font: { numGlyphs: number; getGlyph(id: number): { advanceWidth: number } } };
    }
  )._font;
  const advanceOf = advanceReader(file);
  // Every seventh of a large font: measuring all of them takes fontkit seconds.
  for (let glyph = 0; glyph < font.numGlyphs; glyph += font.numGlyphs > 1000 ? 7 : 1)
    expect(advanceOf(glyph)).toBe(font.getGlyph(glyph).advanceWidth);
});
