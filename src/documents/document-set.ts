/**
 * Every document of a plan: path → bytes. Each is gathered as plain data, placed by a template, laid out and
 * painted; what does not fit or cannot be set in type comes back as a flaw, and nothing is cut in silence.
 */
import type { Consequences } from '../consequences/consequences.ts';
import type { PlanPath } from '../findings/finding.ts';
import type { Plan } from '../plan/model.ts';
import { plainSpellingWords } from '../radio/spelling.ts';
import type { Law } from '../regulations/law.ts';
import { gatherCards } from './cards.ts';
import { gatherChannelList } from './channel-list.ts';
import { channelListCsv } from './channel-list-csv.ts';
import { manifest } from './manifest.ts';
import { type FontBytes, type Fonts, openFonts } from './print/fonts.ts';
import { layOut } from './print/lay-out.ts';
import { type Measure, measureWith } from './print/measure.ts';
import { paint } from './print/paint.ts';
import { readContent } from './print/read-content.ts';
import { renderTemplate, type Templates } from './print/render-template.ts';
import { english, type Words } from './words.ts';
import { gatherWorksheets } from './worksheets.ts';

export interface Press {
  readonly fonts: FontBytes;
  readonly templates: Templates;
}

export interface PrintFlaw {
  readonly kind: 'does-not-fit' | 'no-letter-for';
  /** What in the plan it came from. */
  readonly at: PlanPath;
  readonly message: string;
  readonly suggestion?: string;
}

export interface DocumentSet {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly flaws: readonly PrintFlaw[];
}

export interface Subject {
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
  /** The plan check. */
  readonly check: string;
}

export async function documentSet(
  subject: Subject,
  press: Press,
  words: Words = english,
): Promise<DocumentSet> {
  const { plan, law, consequences, check } = subject;
  const fonts = await openFonts(press.fonts);
  const printer: Printer = {
    fonts,
    measure: measureWith(fonts),
    templates: press.templates,
    date: new Date(`${plan.effective}T00:00:00Z`),
    plan,
  };
  const files = new Map<string, Uint8Array>();
  const flaws: PrintFlaw[] = [];
  const add = async (path: string, template: string, data: object, at: PlanPath) => {
    const printed = await print(printer, template, data, at);
    files.set(path, printed.bytes);
    flaws.push(...printed.flaws);
  };

  await add('cards.pdf', 'cards.hbs', gatherCards(plan, law, consequences, check, words), ['cards', 'size']);
  for (const sheet of gatherWorksheets(plan, consequences, check, words)) {
    await add(`worksheets/${sheet.id}.pdf`, 'worksheet.hbs', sheet, ['radios', sheet.id]);
  }
  const channels = gatherChannelList(plan, consequences, words);
  files.set('channel-list.csv', channelListCsv(channels));
  const head = {
    title: plan.title,
    language: words.language,
    revision: plan.revision,
    effective: plan.effective,
    check,
    checkWords: plainSpellingWords(check).join(' '),
    paper: plan.cards.sheet === 'letter' ? 'Letter' : 'A4',
    caution: law.country.caution,
  };
  await add('channel-list.pdf', 'channel-list.hbs', { ...head, channels }, ['channels']);
  files.set('manifest.json', manifest(plan, check, files));
  return { files, flaws };
}

interface Printer {
  readonly fonts: Fonts;
  readonly measure: Measure;
  readonly templates: Templates;
  /** Stands in each file as its date: that of the plan, so that the same plan gives the same bytes. */
  readonly date: Date;
  readonly plan: Plan;
}

async function print(
  printer: Printer,
  template: string,
  data: object,
  at: PlanPath,
): Promise<{ bytes: Uint8Array; flaws: PrintFlaw[] }> {
  const { fonts, measure, templates, date, plan } = printer;
  const content = readContent(await renderTemplate(templates, template, data), new Map(), template);
  const [right, down] = plan.cards.backShiftMm;
  const laid = layOut(content, measure, { backOffsetMm: { right, down } });
  const flaws: PrintFlaw[] = [
    ...laid.overflows.map(({ what, neededMm, availableMm, wouldFit }) => ({
      kind: 'does-not-fit' as const,
      at: memberOfCard(plan, what) ?? at,
      message: `${capitalised(what)} needs ${neededMm} mm and has ${availableMm} mm.`,
      suggestion: wouldFit,
    })),
    ...laid.missing.map(({ character, text }) => ({
      kind: 'no-letter-for' as const,
      at,
      message: `No typeface here has the character ${character} (U+${character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0')}) of "${text}".`,
    })),
  ];
  return { bytes: await paint(laid, { fonts, date, subject: `Revision ${plan.revision}` }), flaws };
}

/** A card is named by its member, so that what does not fit on it is shown at that member's entry. */
function memberOfCard(plan: Plan, what: string): PlanPath | undefined {
  const id = /^card ([a-z0-9-]+)/.exec(what)?.[1];
  return id !== undefined && plan.members.has(id) ? ['members', id] : undefined;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
