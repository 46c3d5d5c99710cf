/** The glyphs of a text as the operator `TJ` takes them, and what a file must know of the fonts it shows them in. */
import type { FontName, Fonts, OpenFont } from './fonts.ts';
import { advances } from './measure.ts';
import { thousandths } from './operands.ts';

/** The fonts of one file: names for its pages, and the character of each glyph shown. */
export interface ShownFonts {
  /** In the order of their first text. */
  readonly used: ReadonlyMap<FontName, ReadonlyMap<number, number>>;
  /** The font's name on the pages, as in `F1`. */
  nameOf(font: FontName): string;
  /** The operands and the operator that show the text. */
  show(text: string, font: FontName): string;
}

interface Shown {
  readonly operators: string;
  readonly glyphs: readonly (readonly [glyph: number, codePoint: number])[];
}

/** Texts already turned into glyphs; they are the same in every file. */
const known = new WeakMap<OpenFont, Map<string, Shown>>();

export function shownFonts(fonts: Fonts): ShownFonts {
  const used = new Map<FontName, Map<number, number>>();
  const names = new Map<FontName, string>();
  const seen = new Map<FontName, Map<string, string>>();
  const begin = (font: FontName): Map<string, string> => {
    const texts = new Map<string, string>();
    seen.set(font, texts);
    used.set(font, new Map());
    names.set(font, `F${names.size + 1}`);
    return texts;
  };
  return {
    used,
    nameOf(font) {
      if (!names.has(font)) begin(font);
      return names.get(font) ?? '';
    },
    show(text, font) {
      const texts = seen.get(font) ?? begin(font);
      let operators = texts.get(text);
      if (operators === undefined) {
        const shown = shownIn(fonts.font(font), text);
        const glyphs = used.get(font);
        // One glyph may stand for several characters, such as a space and one that does not break; the first counts.
        for (const [glyph, codePoint] of shown.glyphs)
          if (glyphs?.has(glyph) === false) glyphs.set(glyph, codePoint);
        operators = shown.operators;
        texts.set(text, operators);
      }
      return operators;
    },
  };
}

function shownIn(font: OpenFont, text: string): Shown {
  let texts = known.get(font);
  if (texts === undefined) {
    texts = new Map();
    known.set(font, texts);
  }
  let found = texts.get(text);
  if (found === undefined) {
    found = encode(font, text);
    texts.set(text, found);
  }
  return found;
}

function encode(font: OpenFont, text: string): Shown {
  const steps = advances(font, text);
  const glyphs: [number, number][] = [];
  let codes = '';
  let index = 0;
  for (const character of text) {
    const codePoint = character.codePointAt(0) ?? 0;
    const { id, advance } = font.glyph(codePoint);
    glyphs.push([id, codePoint]);
    codes += id.toString(16).padStart(4, '0');
    const kern = (steps[index] ?? advance) - advance;
    if (kern !== 0) codes += `>${thousandths(-kern * 1000)}<`;
    index += 1;
  }
  return { operators: `[<${codes}>]TJ`, glyphs };
}
