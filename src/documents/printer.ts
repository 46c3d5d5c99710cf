/** From data to bytes: template, content, layout, paint; and what of it did not fit or has no letter. */
import type { PlanPath } from '../findings/finding.ts';
import type { Plan } from '../plan/model.ts';
import { html } from './formats/html.ts';
import type { Content } from './print/content.ts';
import { type FontBytes, openFonts } from './print/fonts.ts';
import { layOut } from './print/lay-out.ts';
import { type Measure, measureWith } from './print/measure.ts';
import type { LaidOut } from './print/page.ts';
import { paint } from './print/paint.ts';
import { type Figures, readContent } from './print/read-content.ts';
import { type PreparedTemplates, type Templates, templateEngine } from './print/render-template.ts';
import type { Words } from './words.ts';

export interface Press {
  readonly fonts: FontBytes;
  readonly templates: Templates;
  /** In the language of the plan, as the templates are. */
  readonly words: Words;
  /** Of the templates, those that were compiled beforehand. */
  readonly prepared?: PreparedTemplates;
}

export interface PrintFlaw {
  readonly kind: 'does-not-fit' | 'no-letter-for';
  /** What in the plan it came from. */
  readonly at: PlanPath;
  readonly message: string;
  readonly suggestion?: string;
  /** The character that no typeface has. */
  readonly letter?: string;
  /** What is too wide, as the plan has it. */
  readonly words?: string;
}

export interface Printed {
  readonly bytes: Uint8Array;
  readonly flaws: readonly PrintFlaw[];
}

export interface Printer {
  readonly measure: Measure;
  /** Words in their places. */
  content(template: string, data: object, figures?: Figures): Content;
  /** @param at where in the plan a flaw is shown, if it is not on somebody's card */
  pdf(content: Content, at: PlanPath): Promise<Printed>;
  /** Pages, not painted yet. */
  lay(content: Content): LaidOut;
  paint(laid: LaidOut, at: PlanPath): Promise<Printed>;
  html(content: Content): Uint8Array;
}

export async function printerFor(plan: Plan, press: Press): Promise<Printer> {
  const [fonts, render] = await Promise.all([
    openFonts(press.fonts),
    templateEngine(press.templates, press.prepared),
  ]);
  const measure = measureWith(fonts);
  const [right, down] = plan.cards.backShiftMm;
  // Stands in each file as its date: that of the plan, so that the same plan gives the same bytes.
  const date = new Date(`${plan.effective}T00:00:00Z`);
  const painted = async (laid: LaidOut, at: PlanPath): Promise<Printed> => ({
    bytes: await paint(laid, { fonts, date, subject: press.words.revision(plan.revision) }),
    flaws: flawsOf(plan, laid, at),
  });
  const lay = (content: Content): LaidOut => layOut(content, measure, { backOffsetMm: { right, down } });
  return {
    measure,
    content: (template, data, figures = new Map()) => readContent(render(template, data), figures, template),
    pdf: (content, at) => painted(lay(content), at),
    lay,
    paint: painted,
    html: (content) => new TextEncoder().encode(html(content)),
  };
}

function flawsOf(plan: Plan, laid: LaidOut, at: PlanPath): PrintFlaw[] {
  return [
    ...laid.overflows.map(({ what, neededMm, availableMm, wouldFit, words }) => ({
      kind: 'does-not-fit' as const,
      at: memberOfCard(plan, what) ?? at,
      message: `${capitalised(what)} needs ${neededMm} mm and has ${availableMm} mm.`,
      suggestion: wouldFit,
      ...(words !== undefined && { words }),
    })),
    ...laid.missing.map(({ character, text }) => ({
      kind: 'no-letter-for' as const,
      at,
      letter: character,
      message: `No typeface here has the character ${character} (U+${character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0')}) of "${text}".`,
    })),
  ];
}

/** A card is named by its member, so that what does not fit on it is shown at that member's entry. */
function memberOfCard(plan: Plan, what: string): PlanPath | undefined {
  const id = /^card ([a-z0-9-]+)/.exec(what)?.[1];
  return id !== undefined && plan.members.has(id) ? ['members', id] : undefined;
}

/** Cards, by their ids, of which the front does not hold what is meant for it. */
export function crowdedFronts(laid: LaidOut): ReadonlySet<string> {
  return new Set(laid.overflows.flatMap(({ what }) => /^card (.+?), front/.exec(what)?.[1] ?? []));
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
