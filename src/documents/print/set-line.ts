/** A line of words → items. Left until it is known where the line stands, for most lines that are tried are not kept. */
import { type Atom, type Chunk, extentOf } from './chunks.ts';
import { drawMark } from './draw-mark.ts';
import type { FontName } from './fonts.ts';
import type { Measure } from './measure.ts';
import { type Item, moved } from './page.ts';

export interface Line {
  readonly chunks: readonly Chunk[];
  /** Whether the text, or what goes before a line break in it, ends here. */
  readonly isLast: boolean;
  readonly sizePt: number;
  /** Which part of the structure the words are. */
  readonly node: number | undefined;
  /** The part that each mark of the line is, in their order; none where the words are no part. */
  readonly spans: readonly number[];
}

/** Letters of one font that stand together. */
interface Run {
  text: string;
  readonly font: FontName;
  readonly pageOf?: string;
  readonly flush?: true;
}

/**
 * Puts the items of a line that begins at x, on the baseline y, into a list; its parts are `nodes` further on in the
 * structure. Gives the width of the line, for which no list is needed.
 */
export function setLine(
  line: Line,
  x: number,
  y: number,
  nodes: number,
  measure: Measure,
  into?: Item[],
): number {
  const { chunks, sizePt } = line;
  const node = line.node === undefined ? undefined : line.node + nodes;
  let at = x;
  let run: Run | undefined;
  let lastWidth = 0;
  let mark = 0;
  const flush = (): void => {
    if (run === undefined) return;
    const widthPt = measure.widthEm(run.text, run.font) * sizePt;
    into?.push(textItem(run, at, y, sizePt, widthPt, node, measure));
    at += widthPt;
    run = undefined;
  };
  chunks.forEach((chunk, index) => {
    for (const atom of chunk.atoms) {
      if (atom.kind === 'text') {
        if (run?.font === atom.font && run.pageOf === undefined && atom.pageOf === undefined)
          run.text += atom.text;
        else {
          flush();
          run =
            atom.pageOf === undefined
              ? { text: atom.text, font: atom.font }
              : { text: atom.text, font: atom.font, pageOf: atom.pageOf, ...(atom.flush && { flush: true }) };
        }
        continue;
      }
      flush();
      const { em, pt } = extentOf(atom, measure);
      const wide = em * sizePt + pt;
      if (into !== undefined) {
        const span = atom.kind === 'mark' ? line.spans[mark] : undefined;
        const part = span === undefined ? node : span + nodes;
        for (const item of drawAtom(atom, wide, sizePt))
          into.push(moved(part === undefined ? item : { ...item, node: part }, at, y));
      }
      if (atom.kind === 'mark') mark += 1;
      at += wide;
    }
    lastWidth = 0;
    if (chunk.space && index < chunks.length - 1) {
      if (run !== undefined && run.pageOf === undefined) run.text += ' ';
      else {
        flush();
        at += measure.widthEm(' ', 'regular') * sizePt;
      }
    } else if (index === chunks.length - 1 && !line.isLast && run !== undefined && run.pageOf === undefined) {
      // A space at the end of a broken line keeps its last word and the next apart when the text is read out.
      lastWidth =
        measure.widthEm(`${run.text} `, run.font) * sizePt - measure.widthEm(run.text, run.font) * sizePt;
      run.text += ' ';
    }
  });
  flush();
  return at - lastWidth - x;
}

const noZeros: readonly number[] = [];

function textItem(
  run: Run,
  x: number,
  y: number,
  sizePt: number,
  widthPt: number,
  node: number | undefined,
  measure: Measure,
): Item {
  const { text, font, pageOf } = run;
  if (pageOf !== undefined)
    return {
      kind: 'text',
      x,
      y,
      ...run,
      sizePt,
      widthPt,
      zeros: noZeros,
      ...(node !== undefined && { node }),
    };
  const middles = measure.zeros(text, font);
  const zeros = middles.length === 0 ? noZeros : middles.map((em) => em * sizePt);
  return node === undefined
    ? { kind: 'text', x, y, text, font, sizePt, widthPt, zeros }
    : { kind: 'text', x, y, text, font, sizePt, widthPt, zeros, node };
}

/** Ticks, blanks and marks, drawn from the beginning of their room on a baseline of 0. */
function drawAtom(
  atom: Exclude<Atom, { kind: 'text' }>,
  wide: number,
  sizePt: number,
): Exclude<Item, { kind: 'group' }>[] {
  if (atom.kind === 'blank')
    return [
      {
        kind: 'line',
        points: [
          [0, 0.15 * sizePt],
          [wide, 0.15 * sizePt],
        ],
        widthPt: 0.5,
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
          [0, top],
          [side, top],
          [side, bottom],
          [0, bottom],
        ],
        strokePt: 0.6,
      },
    ];
  }
  return drawMark(atom.shape, wide / 2, -0.375 * sizePt, 0.36 * sizePt);
}
