/**
 * Text cut into chunks: what stays together on a line. A chunk does not depend on the size of the type, so a
 * text is cut once, however many sizes and widths are tried on it.
 */
import type { Inline, MarkShape } from './content.ts';
import type { FontName } from './fonts.ts';
import type { Measure } from './measure.ts';
import { pointsPerMm, type Setting } from './slab.ts';

export type Atom =
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly font: FontName;
      readonly pageOf?: string;
      readonly flush?: true;
    }
  | { readonly kind: 'tick' }
  | { readonly kind: 'blank'; readonly widthPt: number }
  | { readonly kind: 'mark'; readonly shape: MarkShape; readonly says: string };

/** Atoms that stay together, and whether a space or the end of a line follows. */
export interface Chunk {
  readonly atoms: readonly Atom[];
  /** Width: a part that grows with the type, and one that does not. */
  readonly em: number;
  readonly pt: number;
  readonly mayBreak: boolean;
  readonly space: boolean;
  readonly lineEnds: boolean;
  /** Whether a mark is among the atoms. */
  readonly marks: boolean;
}

interface CutText {
  readonly chunks: readonly Chunk[];
  /** Characters no font holds, with the words they stand in. */
  readonly missing: ReadonlyMap<string, string>;
}

interface Making {
  readonly atoms: Atom[];
  em: number;
  pt: number;
  mayBreak: boolean;
  space: boolean;
  lineEnds: boolean;
  marks: boolean;
}

/** Texts already cut. Content is never changed, so they stay true; they live as long as one piece of layout work. */
export type Cuts = Map<readonly Inline[], { plain?: CutText; strong?: CutText }>;

export function chunksOf(inline: readonly Inline[], setting: Setting, strong: boolean): readonly Chunk[] {
  const { measure, notes, cuts, pageNumbers } = setting;
  let found = cuts.get(inline);
  if (found === undefined) {
    found = {};
    notes.refers ||=
      pageNumbers === undefined &&
      inline.some(
        (item, index) => item.kind === 'page-of' && item.flush !== true && index < inline.length - 1,
      );
    // The width of a page number is known only when the pages are: such a text is cut anew for each attempt.
    if (!inline.some(({ kind }) => kind === 'page-of')) cuts.set(inline, found);
  }
  const key = strong ? 'strong' : 'plain';
  found[key] ??= cutText(inline, measure, strong, pageNumbers);
  for (const [character, text] of found[key].missing)
    if (!notes.missing.has(character)) notes.missing.set(character, text);
  return found[key].chunks;
}

/** The width of an atom: ems of type and points beside. */
export function extentOf(atom: Atom, measure: Measure): { readonly em: number; readonly pt: number } {
  if (atom.kind === 'text') return { em: measure.widthEm(atom.text, atom.font), pt: 0 };
  if (atom.kind === 'blank') return { em: 0, pt: atom.widthPt };
  return { em: atom.kind === 'tick' ? 1.1 : 0.85, pt: 0 };
}

function cutText(
  inline: readonly Inline[],
  measure: Measure,
  strong: boolean,
  pageNumbers: ReadonlyMap<string, number> | undefined,
): CutText {
  const missing = new Map<string, string>();
  const chunks: Making[] = [];
  let open = false;
  const put = (atom: Atom, mayBreak: boolean): void => {
    const last = chunks.at(-1);
    const { em, pt } = extentOf(atom, measure);
    const marks = atom.kind === 'mark';
    if (open && last !== undefined) {
      last.atoms.push(atom);
      last.em += em;
      last.pt += pt;
      last.mayBreak &&= mayBreak;
      last.marks ||= marks;
    } else chunks.push({ atoms: [atom], em, pt, mayBreak, space: false, lineEnds: false, marks });
    open = true;
  };
  const close = (how: 'space' | 'lineEnds'): void => {
    const last = chunks.at(-1);
    if (how === 'lineEnds' && (last === undefined || last.lineEnds))
      chunks.push({ atoms: [], em: 0, pt: 0, mayBreak: false, space: false, lineEnds: true, marks: false });
    else if (last !== undefined) last[how] = true;
    open = false;
  };
  const words = (text: string, isStrong: boolean, code: boolean, mayBreak: boolean): void => {
    const found = measure.pieces(text, isStrong, code);
    for (const character of found.missing) missing.set(character, text);
    for (const piece of found.pieces) put({ kind: 'text', ...piece }, mayBreak);
  };
  for (const item of inline) {
    if (item.kind === 'text') {
      if (item.whole) {
        words(item.text, strong || item.strong, item.code, false);
        continue;
      }
      item.text.split(/( +)/).forEach((part, index) => {
        if (part === '') return;
        if (index % 2 === 1) close('space');
        else words(part, strong || item.strong, item.code, !/\d/.test(part));
      });
    } else if (item.kind === 'break') close('lineEnds');
    else if (item.kind === 'tick') put({ kind: 'tick' }, false);
    else if (item.kind === 'blank') put({ kind: 'blank', widthPt: item.widthMm * pointsPerMm }, false);
    else if (item.kind === 'mark') put(item, false);
    else if (item.kind === 'page-of') {
      const number = pageNumbers?.get(item.id);
      const font = strong ? 'bold' : 'regular';
      if (item.word !== undefined) words(`${item.word}\u00a0`, strong, false, false);
      // Where the number is not known yet, room is left for three figures.
      put(
        number === undefined
          ? { kind: 'text', text: '000', font, pageOf: item.id, ...(item.flush && { flush: true as const }) }
          : { kind: 'text', text: String(number), font },
        false,
      );
    }
  }
  return { chunks, missing };
}
