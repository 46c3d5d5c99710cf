/**
 * Words that documents are made of where a template cannot place them, because which word it is depends on
 * the plan. They are made from a {@link WordList}, which a file can hold.
 */
import type { OffsetDirection } from '../consequences/channel-particulars.ts';
import type { ThingKind } from '../consequences/hangs-on.ts';
import type { Standing } from '../consequences/outages.ts';
import type { Severity } from '../findings/finding.ts';
import type { Cards, CheckIn, EntryField, Grade } from '../plan/model.ts';
import type { Heard } from '../reach/heard.ts';
import type { Verdict } from '../reach/verdict.ts';
import type { Country } from '../regulations/country.ts';
import { englishList, type Forms, type WordList } from './words-en.ts';

/** A text and, where it is not in the language of the document, the language it is in; else that is empty. */
export interface Said {
  readonly text: string;
  readonly language: string;
}

export interface Words {
  readonly language: string;
  revision(revision: number): string;
  readonly direction: Readonly<Record<OffsetDirection, string>>;
  readonly grade: Readonly<Record<Grade, string>>;
  /** Of a path, in kilometres from its start. */
  noElevation(from: string, to: string, of: string): string;
  readonly neitherTransmits: string;
  readonly heard: Readonly<Record<Heard, string>>;
  readonly field: Readonly<Record<EntryField, string>>;
  /** Days of the week, Monday first. */
  readonly dayShort: readonly string[];
  readonly everyDay: string;
  readonly weekdays: string;
  readonly weekends: string;
  readonly utc: string;
  /** After full hours of the clock: `07 10 13 h`. */
  readonly hours: string;
  readonly listenOnly: string;
  /** The mark of a member's radio on their card, counted from 0. */
  radioMark(index: number): string;
  /** With which radio, by its mark. */
  onRadio(mark: string): string;
  readonly none: string;
  /** The power of a channel that is only listened to: whatever the radio is set to. */
  readonly any: string;
  readonly anyPower: string;
  readonly toneKind: Readonly<Record<'ctcss' | 'dcs' | 'none', string>>;
  /** The edge a sheet is turned about, as the note on printing says it. */
  readonly flip: Readonly<Record<Cards['flip'], string>>;
  /** Months, January first, as a card has room for them. */
  readonly monthShort: readonly string[];
  dayAndMonth(day: number, month: string): string;
  /** On a rung that nobody has tried from where the member may be. */
  readonly untried: string;
  /** What was heard from each place tried, the day with it: `tried 14 Nov: North Trailhead readable`. */
  tried(date: string, heard: readonly { readonly place: string; readonly heard: string }[]): string;
  /** The tone needed to hear a channel. */
  toneBack(tone: string): string;
  readonly verdict: Readonly<Record<Verdict, string>>;
  readonly severity: Readonly<Record<Severity, string>>;
  readonly standing: Readonly<Record<Standing, string>>;
  readonly thing: Readonly<Record<ThingKind, string>>;
  readonly atOnce: string;
  after(span: string): string;
  /** All members, or all but some: `everybody but Vera, Tomas`. */
  everybody(but: readonly string[]): string;
  /** What a station needs, and how long it runs without: `Valley power feeder, 12 h without`. */
  needs(things: readonly string[], backup: string): string;
  /** What figures show, for whoever cannot see them. */
  readonly figure: {
    readonly day: string;
    readonly net: string;
    readonly bands: string;
    profile(from: string, to: string, clearance: string): string;
    readonly code: string;
  };
  /** Lines of the roll-call script that hang on who calls whom. */
  readonly script: {
    /** @param signs whether net control gives a call sign; else a name */
    open(signs: boolean, title: string, net: string, channel: string): string;
    readonly urgent: string;
    readonly check: string;
    missed(ladder: string): string;
    close(signs: boolean, net: string): string;
  };
  readonly testSheet: { readonly title: string; readonly front: string; readonly back: string };
  calls(count: number): string;
  from(place: string): string;
  mailbox(name: string, through: readonly string[]): string;
  meet(place: string, when: string | undefined): string;
  /** `every 2nd day` */
  everyDays(every: number): string;
  everyWeeks(every: number): string;
  /** `15th of the month` */
  dayOfMonth(day: number): string;
  /** `1st Mon of the month`; -1 is the last. */
  weekdayOfMonth(which: number, day: string): string;
  until(date: string): string;
  readonly guestCard: string;
  readonly calendar: {
    channel(slot: number, name: string): string;
    readonly listen: string;
    control(names: readonly string[], turn: CheckIn['turn']): string;
    missed(ladder: string): string;
    /** Title of the entry that stands on a member's own turn. */
    yourTurn(checkIn: string): string;
    leftOut(date: string): string;
    comesTwice(date: string): string;
    revision(revision: number, check: string): string;
  };
  readonly change: WordList['change'];
  /** Columns of the channel list in a spreadsheet. */
  readonly columns: readonly string[];
  /** The plan check, a word for each letter and figure: `Delta Seven`. */
  spelled(check: string): string;
  readonly exposure: {
    readonly estimate: Said;
    readonly atTheBody: Said;
    noLimit(frequencyMHz: number): Said;
    /** The table of limits; `known` is what it is called where the list has no other name for it. */
    limits(table: Country['exposure'], known: string): string;
  };
  service(id: string): string;
  noLicence(service: string): string;
  licenceClass(service: string, id: string): string;
  caution(country: Country): Said;
  /** How a service must identify itself, in the words of the country's row where the list has none. */
  identify(country: Country, service: string, how: string): Said;
}

/** @param missing paths of the list that stand there in English because the language has no words for them yet */
export function wordsFrom(list: WordList, missing: ReadonlySet<string> = new Set()): Words {
  const { figure, script, calendar, needs, spelling, rules, exposure } = list;
  const { language } = list;
  const ordinal = (number: number) => byNumber(list.ordinal, number, { number });
  const own = (text: string): Said => ({ text, language: '' });
  const said = (path: string, text: string): Said =>
    missing.has(path) ? { text, language: 'en' } : own(text);
  const quoted = (mine: string | undefined, theirs: string, country: Country): Said => {
    if (mine !== undefined) return own(mine);
    const written = country.language ?? 'en';
    return { text: theirs, language: mainPart(written) === mainPart(language) ? '' : written };
  };
  return {
    language,
    revision: (revision) => fill(list.revision, { revision }),
    direction: list.direction,
    grade: list.grade,
    noElevation: (from, to, of) => fill(list['no-elevation'], { from, to, of }),
    neitherTransmits: list['neither-transmits'],
    heard: list.heard,
    field: list.field,
    dayShort: list.days,
    everyDay: list['every-day'],
    weekdays: list.weekdays,
    weekends: list.weekends,
    utc: list.utc,
    hours: list.hours,
    listenOnly: list['listen-only'],
    radioMark: (index) => list['radio-marks'][index] ?? String(index + 1),
    onRadio: (radio) => fill(list['on-radio'], { radio }),
    none: list.none,
    any: list.any,
    anyPower: list['any-power'],
    toneKind: list['tone-kind'],
    flip: list.flip,
    monthShort: list.months,
    dayAndMonth: (day, month) => fill(list['day-and-month'], { day, month }),
    untried: list.untried,
    tried: (date, heard) =>
      fill(list.tried, { date, heard: heard.map((each) => fill(list['tried-from'], each)).join(', ') }),
    toneBack: (tone) => fill(list['tone-back'], { tone }),
    verdict: list.verdict,
    severity: list.severity,
    standing: {
      'off the air': list.standing['off-the-air'],
      'cut off': list.standing['cut-off'],
    },
    thing: list.thing,
    atOnce: list['at-once'],
    everybody: (but) =>
      but.length === 0 ? list.everybody : fill(list['everybody-but'], { names: but.join(', ') }),
    after: (span) => fill(list.after, { span }),
    needs: (things, backup) =>
      fill(things.length === 0 ? needs.backup : backup === '' ? needs.things : needs.both, {
        things: things.join(', '),
        backup,
      }),
    figure: {
      ...figure,
      profile: (from, to, clearance) => fill(figure.profile, { from, to, clearance }),
    },
    script: {
      ...script,
      open: (signs, title, net, channel) =>
        fill(signs ? script.open : script['open-by-name'], { title, net, channel }),
      missed: (ladder) => fill(script.missed, { ladder }),
      close: (signs, net) => fill(signs ? script.close : script['close-by-name'], { net }),
    },
    testSheet: list['test-sheet'],
    calls: (count) => byNumber(list.calls, count, { count }),
    from: (place) => fill(list.from, { place }),
    mailbox: (name, through) =>
      through.length === 0
        ? fill(list.mailbox, { name })
        : fill(list['mailbox-through'], { name, stations: through.join(', ') }),
    meet: (place, when) =>
      when === undefined ? fill(list.meet, { place }) : fill(list['meet-at'], { place, when }),
    everyDays: (every) =>
      every === 1 ? list['every-day'] : fill(list['every-days'], { ordinal: ordinal(every) }),
    everyWeeks: (every) => fill(list['every-weeks'], { ordinal: ordinal(every) }),
    dayOfMonth: (day) => fill(list['day-of-month'], { ordinal: ordinal(day) }),
    weekdayOfMonth: (which, day) =>
      which === -1
        ? fill(list['last-of-month'], { day })
        : fill(list['weekday-of-month'], { ordinal: ordinal(which), day }),
    until: (date) => fill(list.until, { date }),
    guestCard: list['guest-card'],
    calendar: {
      channel: (slot, name) => fill(calendar.channel, { slot, name }),
      listen: calendar.listen,
      control: (names, turn) =>
        fill(names.length === 1 ? calendar.control : calendar.turns[turn], { names: names.join(', ') }),
      missed: (ladder) => fill(calendar.missed, { ladder }),
      yourTurn: (checkIn) => fill(calendar['your-turn'], { 'check-in': checkIn }),
      leftOut: (date) => fill(calendar['left-out'], { date }),
      comesTwice: (date) => fill(calendar['comes-twice'], { date }),
      revision: (revision, check) => fill(calendar.revision, { revision, check }),
    },
    change: list.change,
    columns: list.columns,
    spelled: (check) => [...check].map((character) => wordFor(spelling, character)).join(' '),
    exposure: {
      estimate: said('exposure.estimate', exposure.estimate),
      atTheBody: said('exposure.at-the-body', exposure['at-the-body']),
      noLimit: (frequencyMHz) =>
        said('exposure.no-limit', fill(exposure['no-limit'], { frequency: frequencyMHz })),
      limits: (table, known) => of(list['exposure-limits'], table) ?? known,
    },
    service: (id) => of(list.services, id) ?? id,
    noLicence: (service) => fill(list['no-licence'], { service }),
    licenceClass: (service, id) => of(of(list.classes, service), id) ?? id,
    caution: (country) => quoted(of(rules, country.code)?.caution, country.caution, country),
    identify: (country, service, how) => quoted(of(of(rules, country.code)?.identify, service), how, country),
  };
}

export const english: Words = wordsFrom(englishList);

/** Of `de-CH` the language alone: who reads one of its kinds reads the others. */
function mainPart(tag: string): string {
  return tag.split('-')[0] ?? tag;
}

/** Names in braces are replaced by what they stand for. */
export function fill(text: string, values: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([a-z-]+)\}/g, (name, key: string) => String(of(values, key) ?? name));
}

/** The form for this very number, else for the longest ending of it, else the one for all others. */
function byNumber(forms: Forms, number: number, values: Readonly<Record<string, number>>): string {
  const figures = String(number);
  const endings = Array.from(figures, (_, from) => forms[`ends-${figures.slice(from)}`]);
  const form = [forms[figures], ...endings, forms['other']].find((each) => each !== undefined);
  return fill(form ?? '', values);
}

function wordFor({ letters, figures }: WordList['spelling'], character: string): string {
  const letter = character.toUpperCase().charCodeAt(0) - 65;
  return (/[0-9]/.test(character) ? figures[Number(character)] : letters[letter]) ?? character;
}

/** An entry of a map that a file may have written: never one that every object has. */
function of<Value>(map: Readonly<Record<string, Value>> | undefined, key: string): Value | undefined {
  return map !== undefined && Object.hasOwn(map, key) ? map[key] : undefined;
}
