/**
 * How wide words are and which font holds each of their characters. Layout takes this as an argument, so
 * that its tests can use letters of equal width.
 */
import type { FontName, Fonts, OpenFont } from './fonts.ts';

/** Characters of one text that stand in one font. */
export interface Piece {
  readonly text: string;
  readonly font: FontName;
}

export interface Measure {
  /** The text cut where the font must change; `missing` lists the characters no font holds, each once, set as U+FFFD. */
  pieces(
    text: string,
    strong: boolean,
    code: boolean,
  ): { readonly pieces: readonly Piece[]; readonly missing: readonly string[] };
  /** Width as a part of the type size. */
  widthEm(text: string, font: FontName): number;
  /** Heights as parts of the type size; descent counts downwards. */
  heights(font: FontName): {
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly xHeight: number;
  };
  /** The middles of the zeros, each of which needs a stroke, from the start of the text, as parts of the type size. */
  zeros(text: string, font: FontName): readonly number[];
}

export function measureWith(fonts: Fonts): Measure {
  const widths = new Map<FontName, Map<string, number>>();
  const none: readonly number[] = [];
  const zeros = new Map<string, readonly number[]>();
  const cut = new Map<string, { pieces: readonly Piece[]; missing: readonly string[] }>();
  return {
    pieces(text, strong, code) {
      const key = `${strong ? 's' : ''}${code ? 'c' : ''} ${text}`;
      let found = cut.get(key);
      if (found === undefined) {
        found = splitByFont(fonts, text, strong, code);
        cut.set(key, found);
      }
      return found;
    },
    widthEm(text, font) {
      let ofFont = widths.get(font);
      if (ofFont === undefined) {
        ofFont = new Map();
        widths.set(font, ofFont);
      }
      let width = ofFont.get(text);
      if (width === undefined) {
        width = advances(fonts.font(font), text).reduce((sum, advance) => sum + advance, 0);
        ofFont.set(text, width);
      }
      return width;
    },
    heights: (font) => fonts.font(font),
    zeros(text, name) {
      if (!text.includes('0')) return none;
      const key = `${name} ${text}`;
      let found = zeros.get(key);
      if (found === undefined) {
        found = middlesOfZeros(fonts.font(name), text);
        zeros.set(key, found);
      }
      return found;
    },
  };
}

function middlesOfZeros(font: OpenFont, text: string): number[] {
  const middles: number[] = [];
  const half = font.glyph(0x30).advance / 2;
  const steps = advances(font, text);
  let x = 0;
  [...text].forEach((character, index) => {
    if (character === '0') middles.push(x + half);
    x += steps[index] ?? 0;
  });
  return middles;
}

/** The way from each character to the next, kerning included, as parts of the type size. */
export function advances(font: OpenFont, text: string): number[] {
  const found: number[] = [];
  let previous: number | undefined;
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const last = found.length - 1;
    if (previous !== undefined) found[last] = (found[last] ?? 0) + font.kern(previous, codePoint);
    found.push(font.glyph(codePoint).advance);
    previous = codePoint;
  }
  return found;
}

function splitByFont(
  fonts: Fonts,
  text: string,
  strong: boolean,
  code: boolean,
): { pieces: Piece[]; missing: string[] } {
  const chain: FontName[] = [
    code ? (strong ? 'mono-bold' : 'mono') : strong ? 'bold' : 'regular',
    strong ? 'fallback-bold' : 'fallback',
  ];
  const pieces: { text: string; font: FontName }[] = [];
  const missing = new Set<string>();
  for (const character of text.normalize('NFC')) {
    const codePoint = character.codePointAt(0) ?? 0;
    const font = chain.find((name) => fonts.font(name).has(codePoint));
    if (font === undefined) missing.add(character);
    const shown = font === undefined ? '\ufffd' : character;
    const name = font ?? (strong ? 'fallback-bold' : 'fallback');
    const last = pieces.at(-1);
    if (last?.font === name) last.text += shown;
    else pieces.push({ text: shown, font: name });
  }
  return { pieces, missing: [...missing] };
}
