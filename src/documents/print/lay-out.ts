/** Content → pages: sheets of running text. Cards go through {@link ./impose.ts}. */

import { cardFormats } from './card-format.ts';
import type { Cuts } from './chunks.ts';
import type { CardDocument, Content, Inline, PagedDocument, PaperName } from './content.ts';
import { withFigureBoxes } from './figure-boxes.ts';
import { fillPages, type Standing } from './fill-pages.ts';
import { type Imposition, impose } from './impose.ts';
import { layBlocks } from './lay-blocks.ts';
import { layText } from './lay-text.ts';
import type { Measure } from './measure.ts';
import type { Item, LaidOut, Page, Running } from './page.ts';
import { setDown } from './set-down.ts';
import { addNode, type Notes, newNotes, pointsPerMm, type Setting, type Slab } from './slab.ts';

/** A4: ISO 216. Letter: 8.5 by 11 inches, ANSI/ASME Y14.1. In points. */
export const papers: {
  readonly [paper in PaperName]: { readonly widthPt: number; readonly heightPt: number };
} = {
  A4: { widthPt: 210 * pointsPerMm, heightPt: 297 * pointsPerMm },
  Letter: { widthPt: 612, heightPt: 792 },
};

/** Clear of the 4 to 6 mm that office printers leave white, with room for a punch and the running lines. */
const marginPt = 15 * pointsPerMm;

/** `imposition` holds what the printer does to sheets of cards; other documents do not ask for it. */
export function layOut(content: Content, measure: Measure, imposition: Imposition = {}): LaidOut {
  return content.kind === 'cards' ? layOutCards(content, measure, imposition) : layOutPages(content, measure);
}

function layOutCards(content: CardDocument, measure: Measure, imposition: Imposition): LaidOut {
  const notes = newNotes();
  const pages = impose(content, papers[content.paper], measure, notes, imposition);
  return finish(content, pages, [], notes);
}

/**
 * Page numbers in the text change its width, and so may the pages they name: the document is laid out until
 * they agree. Should they chase each other, room for three figures is left and the numbers are put in last.
 */
function layOutPages(content: PagedDocument, measure: Measure): LaidOut {
  // Texts without such a number are cut once for all attempts.
  const cuts: Cuts = new Map();
  const first = arrange(content, measure, cuts, undefined);
  if (!first.notes.refers) return setPages(content, first);
  let before = first;
  for (let attempt = 0; attempt < 4; attempt += 1) {
    const again = arrange(content, measure, cuts, before.pageOfId);
    if ([...before.pageOfId].every(([id, page]) => again.pageOfId.get(id) === page))
      return setPages(content, again);
    before = again;
  }
  return setPages(content, first);
}

/** A document filled into pages, with nothing set down yet. */
interface Arranged {
  readonly filled: readonly (readonly Standing[])[];
  readonly setting: Setting;
  readonly notes: Notes;
  readonly runningPt: number;
  readonly top: number;
  readonly bottom: number;
  readonly pageOfId: ReadonlyMap<string, number>;
  readonly outline: LaidOut['outline'];
}

function arrange(
  content: PagedDocument,
  measure: Measure,
  cuts: Cuts,
  pageNumbers: ReadonlyMap<string, number> | undefined,
): Arranged {
  const notes = newNotes();
  const setting: Setting = {
    measure,
    sizePt: content.sizePt,
    leastPt: Math.min(content.sizePt, 8),
    leading: 1.3,
    gapEm: 0.6,
    cellPadEm: 0.5,
    headingSizes: [1.7, 1.35, 1.15, 1],
    notes,
    cuts,
    hyphenates: true,
    ...(pageNumbers === undefined ? {} : { pageNumbers }),
  };
  const paper = papers[content.paper];
  const widthPt = paper.widthPt - 2 * marginPt;
  const runningPt = Math.max(8, content.sizePt * 0.85);
  const [head, foot] = [content.head, content.foot].map((inline) =>
    inline.length === 0 ? [] : layRunning(inline, widestPage, setting, widthPt, runningPt),
  ) as [readonly Slab[], readonly Slab[]];
  const top = marginPt + head.length * runningPt * 1.2;
  const bottom = paper.heightPt - marginPt - foot.length * runningPt * 1.2;
  const root = addNode(setting, 'Document', undefined);
  const slabs = layBlocks(content.blocks, widthPt, setting, root);
  const { pages: filled, tooTall } = fillPages(slabs, bottom - top);
  for (const slab of tooTall) {
    const [neededMm, availableMm] = [slab.heightPt, bottom - top].map((pt) =>
      Math.ceil(pt / pointsPerMm),
    ) as [number, number];
    notes.overflows.push({
      what: `a piece that cannot be divided (a row, columns, a frame or a figure)${slab.heading === undefined ? '' : ` with the heading "${slab.heading.text}"`}`,
      neededMm,
      availableMm,
      wouldFit: `A page holds ${availableMm} mm: divide it, or take out ${neededMm - availableMm} mm.`,
    });
  }

  const pageOfId = new Map<string, number>();
  const outline: { text: string; level: number; page: number }[] = [];
  filled.forEach((standing, page) => {
    for (const { slab } of standing) {
      for (const id of slab.ids ?? []) if (!pageOfId.has(id)) pageOfId.set(id, page + 1);
      if (slab.heading !== undefined) outline.push({ ...slab.heading, page });
    }
  });

  return { filled, setting, notes, runningPt, top, bottom, pageOfId, outline };
}

interface PageNumber {
  readonly page: number;
  readonly pages: number;
}

/** Takes as many lines as any page of a document will: the room of running lines is one on every page. */
const widestPage: PageNumber = { page: 888, pages: 888 };

/** The lines of a running head or foot; one that is too long for a line goes on in the next, and nothing is lost. */
function layRunning(
  inline: readonly Inline[],
  { page, pages }: PageNumber,
  setting: Setting,
  widthPt: number,
  sizePt: number,
): readonly Slab[] {
  const numbered = inline.map(
    (item): Inline =>
      item.kind === 'page' || item.kind === 'pages'
        ? {
            kind: 'text',
            text: String(item.kind === 'page' ? page : pages),
            strong: false,
            code: false,
            whole: true,
          }
        : item,
  );
  return layText(numbered, widthPt, sizePt, setting, { what: 'the running line' });
}

function setPages(content: PagedDocument, arranged: Arranged): LaidOut {
  const { filled, setting, notes, runningPt, top, bottom, pageOfId, outline } = arranged;
  const { measure } = setting;
  const paper = papers[content.paper];
  const widthPt = paper.widthPt - 2 * marginPt;
  const pages = filled.map((standing, index): Page => {
    const items: Item[] = [];
    const running = (inline: readonly Inline[], y: number, kind: Running): void => {
      const number = { page: index + 1, pages: filled.length };
      const placed: Item[] = [];
      layRunning(inline, number, setting, widthPt, runningPt).forEach((line, row) => {
        setDown(line.parts, marginPt, y + row * runningPt * 1.2, 0, measure, placed);
      });
      for (const item of placed) items.push(item.kind === 'group' ? item : { ...item, running: kind });
    };
    if (content.head.length > 0) {
      running(content.head, marginPt - runningPt * 1.1, 'Header');
      const ruleY = top - runningPt * 0.85;
      items.push({
        kind: 'line',
        points: [
          [marginPt, ruleY],
          [paper.widthPt - marginPt, ruleY],
        ],
        widthPt: 0.3,
        running: 'Header',
      });
    }
    for (const { slab, y } of standing) setDown(slab.parts, marginPt, top + y, 0, measure, items);
    if (content.foot.length > 0) running(content.foot, bottom + runningPt * 0.6, 'Footer');
    return numberPages({ ...paper, items }, pageOfId, measure);
  });
  return finish(content, pages, outline, notes);
}

function finish(
  content: Content,
  pages: readonly Page[],
  outline: LaidOut['outline'],
  notes: Notes,
): LaidOut {
  return {
    title: content.title,
    language: content.language,
    pages,
    structure: withFigureBoxes(notes.structure, pages),
    outline,
    ...(content.kind === 'cards' && cardFormats[content.cardSize].panels === 1 ? { flip: content.flip } : {}),
    overflows: notes.overflows,
    missing: [...notes.missing].map(([character, text]) => ({ character, text })),
    smallestPt: notes.smallest,
  };
}

/** Puts the numbers in that were not known until all pages were filled; an id that stands nowhere shows a dash. */
function numberPages(page: Page, pageOfId: ReadonlyMap<string, number>, measure: Measure): Page {
  if (!page.items.some((item) => item.kind === 'text' && item.pageOf !== undefined)) return page;
  const items = page.items.map((item): Item => {
    if (item.kind !== 'text' || item.pageOf === undefined) return item;
    const { pageOf, flush, ...rest } = item;
    const text = String(pageOfId.get(pageOf) ?? '–');
    const widthPt = measure.widthEm(text, item.font) * item.sizePt;
    return {
      ...rest,
      ...(flush === true && { x: item.x + item.widthPt - widthPt }),
      text,
      widthPt,
      zeros: measure.zeros(text, item.font).map((em) => em * item.sizePt),
    };
  });
  return { ...page, items };
}
