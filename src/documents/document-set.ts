/**
 * Every document of a plan: path → bytes. Each is gathered as plain data, placed by a template, laid out and
 * painted; what does not fit or cannot be set in type comes back as a flaw, and nothing is cut in silence.
 */
import type { PlanPath } from '../findings/finding.ts';
import { type BookletSubject, cautionOf, gatherBooklet } from './booklet/booklet.ts';
import { gatherCalendars } from './calendar.ts';
import { type CardsData, gatherCards, gatherGeneralCard, withNotesBehind } from './cards.ts';
import { gatherChannelList } from './channel-list.ts';
import { channelListCsv } from './channel-list-csv.ts';
import { type IcsCalendar, ics } from './formats/ics.ts';
import { manifest } from './manifest.ts';
import type { Scene } from './print/content.ts';
import { fineModuleMm, plainModuleMm, qrScene } from './print/qr-scene.ts';
import { layTestSheet } from './print/test-sheet.ts';
import { crowdedFronts, type Press, type Printed, type PrintFlaw, printerFor } from './printer.ts';
import { gatherWorksheets } from './worksheets.ts';

export interface DocumentSet {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly flaws: readonly PrintFlaw[];
}

export interface Wanted {
  /** A folder for each member, with what is theirs and nothing private of others. */
  readonly packs?: boolean;
  /** A sheet that measures the printer. */
  readonly testSheet?: boolean;
}

export async function documentSet(
  subject: BookletSubject,
  press: Press,
  wanted: Wanted = {},
): Promise<DocumentSet> {
  const { plan, law, consequences, check } = subject;
  const { words } = press;
  const printer = await printerFor(plan, press);
  const files = new Map<string, Uint8Array>();
  const flaws: PrintFlaw[] = [];
  // While the pages of one document are deflated the next is laid out.
  const printing: { readonly path: string; readonly printed: Promise<Printed> }[] = [];
  const keep = (path: string, printed: Promise<Printed>): void => {
    // Holds its place among the files.
    files.set(path, new Uint8Array());
    // A fault is thrown when its turn comes, and not before somebody waits for it.
    printed.catch(() => undefined);
    printing.push({ path, printed });
  };
  const finish = async (): Promise<void> => {
    for (const { path, printed } of printing.splice(0)) {
      const { bytes, flaws: found } = await printed;
      files.set(path, bytes);
      flaws.push(...found);
    }
  };
  const add = (path: string, template: string, data: object, at: PlanPath): void =>
    keep(path, printer.pdf(printer.content(template, data), at));
  const addCards = async (path: string, cards: CardsData) => {
    const { data, figures } = await withCodes(cards);
    const lay = (set: CardsData) => printer.lay(printer.content('cards.hbs', set, figures));
    let laid = lay(data);
    const crowded = crowdedFronts(laid);
    // A front that has no line for the first note leaves it to the back; the others keep it.
    if (data.cards.some(({ id, urgent }) => urgent !== '' && crowded.has(id)))
      laid = lay({
        ...data,
        cards: data.cards.map((card) => (crowded.has(card.id) ? withNotesBehind(card) : card)),
      });
    keep(path, printer.paint(laid, ['cards', 'size']));
  };

  const cards = gatherCards(plan, law, consequences, check, words);
  await addCards('cards.pdf', cards);
  await addCards('guest-card.pdf', gatherGeneralCard(plan, law, consequences, check, words));
  for (const sheet of gatherWorksheets(plan, consequences, check, words))
    add(`worksheets/${sheet.id}.pdf`, 'worksheet.hbs', sheet, ['radios', sheet.id]);
  const channels = gatherChannelList(plan, consequences, words);
  files.set('channel-list.csv', channelListCsv(channels, words.columns));
  const head = {
    title: plan.title,
    language: words.language,
    revision: plan.revision,
    effective: plan.effective,
    check,
    checkWords: words.spelled(check),
    paper: plan.cards.sheet === 'letter' ? ('Letter' as const) : ('A4' as const),
    ...cautionOf(law, words),
  };
  add('channel-list.pdf', 'channel-list.hbs', { ...head, channels }, ['channels']);

  const booklet = await gatherBooklet(subject, words, printer.measure);
  const pages = printer.content('booklet.hbs', booklet.data, booklet.figures);
  keep('booklet.pdf', printer.pdf(pages, ['plan']));
  files.set('booklet.html', printer.html(pages));

  const calendars = await gatherCalendars(plan, consequences, check, words);
  const addCalendar = (path: string, calendar: IcsCalendar | undefined) => {
    // A calendar without a single event is none (RFC 5545, 3.6).
    if (calendar && calendar.events.length > 0) files.set(path, ics(calendar));
  };
  addCalendar('calendar/group.ics', calendars?.group);
  for (const [id, calendar] of calendars?.members ?? []) {
    // No id begins with an underscore, so that a member called `group` has a name of their own.
    addCalendar(`calendar/${id === 'group' ? '_group' : id}.ics`, calendar);
  }

  if (wanted.testSheet === true) {
    const sheet = layTestSheet(
      { ...words.testSheet, language: words.language, paper: head.paper, flip: plan.cards.flip },
      printer.measure,
    );
    keep('printer-test.pdf', printer.paint(sheet, ['cards', 'back-shift']));
  }
  if (wanted.packs === true) {
    for (const member of plan.members.values()) {
      const folder = `packs/${member.id}`;
      await addCards(`${folder}/card.pdf`, gatherCards(plan, law, consequences, check, words, [member]));
      addCalendar(`${folder}/calendar.ics`, calendars?.members.get(member.id));
      for (const sheet of gatherWorksheets(plan, consequences, check, words, member))
        add(`${folder}/${sheet.id}.pdf`, 'worksheet.hbs', sheet, ['radios', sheet.id]);
      await finish();
    }
  }
  await finish();
  files.set('manifest.json', manifest(plan, check, files));
  return { files, flaws };
}

/** Draws the codes that cards ask for; a small card has them in fine modules. */
async function withCodes(cards: CardsData): Promise<{ data: CardsData; figures: Map<string, Scene> }> {
  const figures = new Map<string, Scene>();
  const moduleMm = cards.roomy ? plainModuleMm : fineModuleMm;
  const drawn: CardsData['cards'][number][] = [];
  for (const card of cards.cards) {
    if (card.code === null) {
      drawn.push(card);
      continue;
    }
    const scene = await qrScene(card.code.text, card.code.text, moduleMm);
    figures.set(card.code.figure, scene);
    drawn.push({ ...card, code: { ...card.code, mm: scene.widthMm } });
  }
  return { data: { ...cards, cards: drawn }, figures };
}
