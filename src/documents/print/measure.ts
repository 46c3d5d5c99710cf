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
  const widthsIn = rememberedBy((font: FontName) =>
    rememberedBy((text: string) =>
      advances(fonts.font(font), text).reduce((sum, advance) => sum + advance, 0),
    ),
  );
  const none: readonly number[] = [];
  const zerosIn = rememberedBy((font: FontName) =>
    rememberedBy((text: string) => middlesOfZeros(fonts.font(font), text)),
  );
  const piecesIn = rememberedBy((look: number) =>
    rememberedBy((text: string) => splitByFont(fonts, text, (look & 1) !== 0, (look & 2) !== 0)),
  );
  return {
    pieces: (text, strong, code) => piecesIn(Number(strong) + 2 * Number(code))(text),
    widthEm: (text, font) => widthsIn(font)(text),
    heights: (font) => fonts.font(font),
    zeros: (text, font) => (text.includes('0') ? zerosIn(font)(text) : none),
  };
}

/** The same text is measured for each size and place that is tried. */
function rememberedBy<Key, Answer>(find: (key: Key) => Answer): (key: Key) => Answer {
  const known = new Map<Key, Answer>();
  return (key) => {
    let answer = known.get(key);
    if (answer === undefined) {
      answer = find(key);
      known.set(key, answer);
    }
    return answer;
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
