/**
 * The typefaces of every document, opened once and shared by measuring and painting.
 *
 * B612 (drawn for cockpit screens; SIL Open Font License 1.1) has figures of equal width, a flagged 1 and a
 * tailed l, but its zero is an empty oval beside the rounder O, and it has no OpenType `zero` feature: each
 * zero therefore gets a short stroke inside, at the places {@link ./measure.ts} gives. DejaVu Sans holds what B612
 * lacks. Never a .woff2: its glyphs come out invisible though their text can be extracted.
 *
 * fontkit, which reads the files, comes with pdfkit and is reached through it, so that both always agree.
 */

import { advanceReader } from './font-tables.ts';
import { pairKerning } from './pair-kerning.ts';
import { unpackWoff } from './unpack-woff.ts';

export type FontName = 'regular' | 'bold' | 'mono' | 'mono-bold' | 'fallback' | 'fallback-bold';

/** The bytes of each font file, read when the font is first needed. The files are .woff or .ttf. */
export type FontBytes = Readonly<Record<FontName, () => Uint8Array>>;

/** Where each file lies in its package; the caller reads it. */
export const fontFiles: Readonly<Record<FontName, string>> = {
  regular: '@fontsource/b612/files/b612-latin-400-normal.woff',
  bold: '@fontsource/b612/files/b612-latin-700-normal.woff',
  mono: '@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff',
  'mono-bold': '@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff',
  fallback: 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  'fallback-bold': 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf',
};

/** The part of fontkit's font that is used. */
export interface FontSource {
  readonly unitsPerEm: number;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  readonly postscriptName: string;
  readonly italicAngle: number;
  readonly bbox: {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  };
  readonly post: { readonly isFixedPitch: number };
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): { readonly id: number };
  /** The table of glyph positions, absent where the font has none. */
  readonly GPOS?: unknown;
  layout(text: string): { readonly positions: readonly { readonly xAdvance: number }[] };
}

/** A parsed font. Widths and heights are parts of the type size. */
export interface OpenFont {
  readonly name: FontName;
  readonly source: FontSource;
  /** The plain font file. */
  readonly file: Uint8Array;
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  has(codePoint: number): boolean;
  glyph(codePoint: number): { readonly id: number; readonly advance: number };
  /** What the pair is set closer (negative) or wider than its advances. */
  kern(left: number, right: number): number;
}

/** Opens a font when it is first asked for. */
export interface Fonts {
  font(name: FontName): OpenFont;
}

/** Loads pdfkit; nothing is parsed until it is needed. */
export async function openFonts(bytes: FontBytes): Promise<Fonts> {
  const { default: PDFDocument } = await import('pdfkit');
  const reader = new PDFDocument({ autoFirstPage: false, font: '' });
  const opened = new Map<FontName, OpenFont>();
  return {
    font(name) {
      let font = opened.get(name);
      if (font === undefined) {
        const file = Buffer.from(unpackWoff(bytes[name]()));
        reader.font(file);
        // pdfkit keeps the font it has just parsed here; it has no public way to it.
        const parsed = reader as unknown as { readonly _font: { readonly font: FontSource } };
        font = openFont(name, file, parsed._font.font);
        opened.set(name, font);
      }
      return font;
    },
  };
}

/** Up to here letters are Latin and stand alone; what lies beyond may join, stack or belong to another script. */
const firstBeyondLatin = 0x250;

function openFont(name: FontName, file: Uint8Array, source: FontSource): OpenFont {
  const em = source.unitsPerEm;
  const advanceOf = advanceReader(file);
  const glyphs = new Map<number, { id: number; advance: number }>();
  const kerns = new Map<number, number>();
  const pairs = pairKerning(source.GPOS);
  const quick = (left: number, right: number): number => (pairs?.(glyph(left).id, glyph(right).id) ?? 0) / em;
  const slow = (left: number, right: number): number => {
    const [first] = source.layout(String.fromCodePoint(left, right)).positions;
    const kern = first === undefined ? 0 : first.xAdvance / em - glyph(left).advance;
    return Math.abs(kern) < 1e-9 ? 0 : kern;
  };
  const glyph = (codePoint: number) => {
    let found = glyphs.get(codePoint);
    if (found === undefined) {
      const { id } = source.glyphForCodePoint(codePoint);
      found = { id, advance: advanceOf(id) / em };
      glyphs.set(codePoint, found);
    }
    return found;
  };
  return {
    name,
    source,
    file,
    ascent: source.ascent / em,
    descent: -source.descent / em,
    // DejaVu's tables state neither; the figures are those of its H and x.
    capHeight: source.capHeight > 0 ? source.capHeight / em : 0.729,
    xHeight: source.xHeight > 0 ? source.xHeight / em : 0.547,
    has: (codePoint) => source.hasGlyphForCodePoint(codePoint),
    glyph,
    kern(left, right) {
      const key = left * 0x110000 + right;
      let found = kerns.get(key);
      if (found === undefined) {
        found =
          Math.max(left, right) < firstBeyondLatin && pairs !== undefined
            ? quick(left, right)
            : slow(left, right);
        kerns.set(key, found);
      }
      return found;
    },
  };
}
