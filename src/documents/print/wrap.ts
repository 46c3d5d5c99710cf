/**
 * Breaks words into lines. Lines break at spaces only; a figure, a code or any word with a digit in it is
 * never broken, because half a frequency reads as another one. What is too wide is said, not cut.
 */
import { type Atom, type Chunk, chunksOf, extentOf } from './chunks.ts';
import type { Inline } from './content.ts';
import { drawMark } from './draw-mark.ts';
import type { FontName } from './fonts.ts';
import type { Item } from './page.ts';
import { addNode, type Setting } from './slab.ts';

/** A line with its items on a baseline of 0, starting at x 0. */
export interface Line {
  readonly items: readonly Item[];
  readonly widthPt: number;
}

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
  const endLine = (isLast: boolean): void => {
    lines.push(buildLine(current, isLast, sizePt, setting, options.node));
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

/** The width all words need on one line (`natural`), and the widest that cannot be broken (`least`). */
export function widthsOf(
  inline: readonly Inline[],
  sizePt: number,
  setting: Setting,
  strong = false,
): { readonly natural: number; readonly least: number } {
  const space = setting.measure.widthEm(' ', 'regular') * sizePt;
  let natural = 0;
  let least = 0;
  let line = 0;
  for (const chunk of chunksOf(inline, setting, strong)) {
    const wide = chunk.em * sizePt + chunk.pt;
    least = Math.max(least, wide);
    line += wide;
    natural = Math.max(natural, line);
    line = chunk.lineEnds ? 0 : line + (chunk.space ? space : 0);
  }
  return { natural, least };
}

/** A word too long for any line, cut after a hyphen or slash if that helps, else between letters. */
function splitWord(chunk: Chunk, widthPt: number, sizePt: number, setting: Setting): Chunk[] | undefined {
  const [atom] = chunk.atoms;
  if (chunk.atoms.length !== 1 || atom?.kind !== 'text') return undefined;
  const letters = [...atom.text];
  let fits = 0;
  let afterHyphen = 0;
  for (let count = 1; count < letters.length; count += 1) {
    if (setting.measure.widthEm(letters.slice(0, count).join(''), atom.font) * sizePt > widthPt) break;
    fits = count;
    if (/[-/]/.test(letters[count - 1] ?? '')) afterHyphen = count;
  }
  const cut = afterHyphen > 0 ? afterHyphen : fits;
  if (cut === 0) return undefined;
  const part = (text: string): Pick<Chunk, 'atoms' | 'em'> => ({
    atoms: [{ ...atom, text }],
    em: setting.measure.widthEm(text, atom.font),
  });
  return [
    { ...chunk, ...part(letters.slice(0, cut).join('')), space: false, lineEnds: false },
    { ...chunk, ...part(letters.slice(cut).join('')) },
  ];
}

function buildLine(
  chunks: readonly Chunk[],
  isLast: boolean,
  sizePt: number,
  setting: Setting,
  node: number | undefined,
): Line {
  const { measure } = setting;
  const items: Item[] = [];
  const tag = node === undefined ? {} : { node };
  let x = 0;
  let run: { text: string; font: FontName; pageOf?: string; flush?: true } | undefined;
  let lastWidth = 0;
  const flush = (): void => {
    if (run === undefined) return;
    const widthPt = measure.widthEm(run.text, run.font) * sizePt;
    const zeros = run.pageOf === undefined ? measure.zeros(run.text, run.font).map((em) => em * sizePt) : [];
    items.push({ kind: 'text', x, y: 0, ...run, sizePt, widthPt, zeros, ...tag });
    x += widthPt;
    run = undefined;
  };
  chunks.forEach((chunk, index) => {
    for (const atom of chunk.atoms) {
      if (atom.kind === 'text') {
        if (
          run !== undefined &&
          run.font === atom.font &&
          run.pageOf === undefined &&
          atom.pageOf === undefined
        )
          run.text += atom.text;
        else {
          flush();
          run = {
            text: atom.text,
            font: atom.font,
            ...(atom.pageOf === undefined ? {} : { pageOf: atom.pageOf }),
            ...(atom.flush && { flush: true as const }),
          };
        }
        continue;
      }
      flush();
      const { em, pt } = extentOf(atom, measure);
      const wide = em * sizePt + pt;
      items.push(...drawAtom(atom, x, wide, sizePt, setting, node));
      x += wide;
    }
    lastWidth = 0;
    if (chunk.space && index < chunks.length - 1) {
      if (run !== undefined && run.pageOf === undefined) run.text += ' ';
      else {
        flush();
        x += measure.widthEm(' ', 'regular') * sizePt;
      }
    } else if (index === chunks.length - 1 && !isLast && run !== undefined && run.pageOf === undefined) {
      // A space at the end of a broken line keeps its last word and the next apart when the text is read out.
      lastWidth =
        measure.widthEm(`${run.text} `, run.font) * sizePt - measure.widthEm(run.text, run.font) * sizePt;
      run.text += ' ';
    }
  });
  flush();
  return { items, widthPt: x - lastWidth };
}

/** Ticks, blanks and marks as drawn. */
function drawAtom(
  atom: Exclude<Atom, { kind: 'text' }>,
  x: number,
  wide: number,
  sizePt: number,
  setting: Setting,
  node: number | undefined,
): Item[] {
  const tag = node === undefined ? {} : { node };
  if (atom.kind === 'blank')
    return [
      {
        kind: 'line',
        points: [
          [x, 0.15 * sizePt],
          [x + wide, 0.15 * sizePt],
        ],
        widthPt: 0.5,
        ...tag,
      },
    ];
  const top = -0.86 * sizePt;
  const bottom = 0.1 * sizePt;
  if (atom.kind === 'tick') {
    const side = bottom - top;
    return [
      {
        kind: 'polygon',
        points: [
          [x, top],
          [x + side, top],
          [x + side, bottom],
          [x, bottom],
        ],
        strokePt: 0.6,
        ...tag,
      },
    ];
  }
  const spoken = node === undefined ? {} : { node: addNode(setting, 'Span', node, { alt: atom.says }) };
  return drawMark(atom.shape, x + wide / 2, -0.375 * sizePt, 0.36 * sizePt).map((item) => ({
    ...item,
    ...spoken,
  }));
}
