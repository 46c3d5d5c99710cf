/**
 * Breaks words into lines. Lines break at spaces, and inside a word only where it is wider than its room; a figure,
 * a code or any word with a digit in it is never broken, because half a frequency reads as another one. What is too
 * wide is said, not cut.
 */
import { type Chunk, chunksOf } from './chunks.ts';
import type { Inline } from './content.ts';
import type { Line } from './set-line.ts';
import { addNode, type Setting } from './slab.ts';

const noSpans: readonly number[] = [];

/** Lines no wider than `widthPt`, except where one unbreakable word is; `tooWide` is then the width it needs. */
export function wrap(
  inline: readonly Inline[],
  widthPt: number,
  sizePt: number,
  setting: Setting,
  options: { readonly strong?: boolean; readonly node?: number } = {},
): { readonly lines: readonly Line[]; readonly tooWide: number | undefined } {
  setting.notes.smallest = Math.min(
    setting.notes.smallest,
    inline.some((item) => item.kind === 'text') ? sizePt : Number.POSITIVE_INFINITY,
  );
  const spaceEm = setting.measure.widthEm(' ', 'regular');
  const lines: Line[] = [];
  let tooWide: number | undefined;
  let current: Chunk[] = [];
  let width = 0;
  /** A mark of a tagged text is a part of its own, with its meaning in words. */
  const spansOf = (chunks: readonly Chunk[]): readonly number[] =>
    options.node !== undefined && chunks.some(({ marks }) => marks)
      ? chunks.flatMap(({ atoms }) =>
          atoms.flatMap((atom) =>
            atom.kind === 'mark' ? [addNode(setting, 'Span', options.node, { alt: atom.says })] : [],
          ),
        )
      : noSpans;
  const endLine = (isLast: boolean): void => {
    lines.push({ chunks: current, isLast, sizePt, node: options.node, spans: spansOf(current) });
    current = [];
    width = 0;
  };
  let queue = chunksOf(inline, setting, options.strong ?? false);
  for (let index = 0; index < queue.length; index += 1) {
    const chunk = queue[index];
    if (chunk === undefined) break;
    const wide = chunk.em * sizePt + chunk.pt;
    const before = current.length > 0 && current.at(-1)?.space === true ? spaceEm * sizePt : 0;
    if (current.length > 0 && width + before + wide > widthPt + 0.01) endLine(false);
    if (wide > widthPt + 0.01) {
      const parts = chunk.mayBreak ? splitWord(chunk, widthPt, sizePt, setting) : undefined;
      if (parts !== undefined) {
        queue = queue.toSpliced(index, 1, ...parts);
        index -= 1;
        continue;
      }
      tooWide = Math.max(tooWide ?? 0, wide);
    }
    width += (current.length > 0 ? before : 0) + wide;
    current.push(chunk);
    if (chunk.lineEnds) endLine(index === queue.length - 1);
  }
  if (current.length > 0) endLine(true);
  return { lines, tooWide };
}

/** Widths of words at one size of type. */
export interface WordWidths {
  /** All on one line. */
  readonly natural: number;
  /** The widest word. */
  readonly least: number;
  /** The widest part where words are broken after their own hyphens and slashes. */
  readonly atHyphens: number;
  /** The widest part where what may be broken is broken between letters too. */
  readonly broken: number;
}

/** Narrower than this no word is broken: some eight letters. */
const shortestEm = 5;

export function widthsOf(
  inline: readonly Inline[],
  sizePt: number,
  setting: Setting,
  strong = false,
): WordWidths {
  const space = setting.measure.widthEm(' ', 'regular') * sizePt;
  let [natural, least, atHyphens, broken, line] = [0, 0, 0, 0, 0];
  for (const chunk of chunksOf(inline, setting, strong)) {
    const wide = chunk.em * sizePt + chunk.pt;
    least = Math.max(least, wide);
    const part = widestPartOf(chunk, setting) * sizePt + chunk.pt;
    atHyphens = Math.max(atHyphens, part);
    broken = Math.max(broken, isBreakable(chunk) ? Math.min(part, shortestEm * sizePt) : part);
    line += wide;
    natural = Math.max(natural, line);
    line = chunk.lineEnds ? 0 : line + (chunk.space ? space : 0);
  }
  return { natural, least, atHyphens, broken };
}

function isBreakable(chunk: Chunk): boolean {
  return chunk.mayBreak && chunk.atoms.length === 1;
}

/** In ems, of the parts between the hyphens and slashes of a word. */
function widestPartOf(chunk: Chunk, setting: Setting): number {
  const [atom] = chunk.atoms;
  if (!isBreakable(chunk) || atom?.kind !== 'text') return chunk.em;
  const parts = atom.text.split(/(?<=[-/])/);
  return parts.length === 1
    ? chunk.em
    : Math.max(...parts.map((part) => setting.measure.widthEm(part, atom.font)));
}

/** So many letters of a broken word stand on its last line. */
const leastLetters = 3;

/** A word too long for any line, cut after a hyphen or slash if that helps, else between letters. */
function splitWord(chunk: Chunk, widthPt: number, sizePt: number, setting: Setting): Chunk[] | undefined {
  const [atom] = chunk.atoms;
  if (!isBreakable(chunk) || atom?.kind !== 'text') return undefined;
  const hyphen = setting.hyphenates === true ? '-' : '';
  const letters = [...atom.text];
  let fits = 0;
  let afterHyphen = 0;
  const wide = (text: string) => setting.measure.widthEm(text, atom.font) * sizePt;
  for (let count = 1; count < letters.length; count += 1) {
    const begin = letters.slice(0, count).join('');
    if (wide(begin) > widthPt) break;
    // A letter is not parted from the accents that follow it.
    if (wide(begin + hyphen) <= widthPt && !/^\p{M}/u.test(letters[count] ?? '')) fits = count;
    if (/[-/]/.test(letters[count - 1] ?? '')) afterHyphen = count;
  }
  const between = Math.min(fits, Math.max(1, letters.length - leastLetters));
  const cut = afterHyphen > 0 ? afterHyphen : between;
  if (cut === 0) return undefined;
  const part = (text: string): Pick<Chunk, 'atoms' | 'em'> => ({
    atoms: [{ ...atom, text }],
    em: setting.measure.widthEm(text, atom.font),
  });
  return [
    {
      ...chunk,
      ...part(letters.slice(0, cut).join('') + (afterHyphen > 0 ? '' : hyphen)),
      space: false,
      lineEnds: false,
    },
    { ...chunk, ...part(letters.slice(cut).join('')) },
  ];
}
