/**
 * Words that documents are made of where a template cannot place them, because which word it is depends on
 * the plan. Another language is another object of this type, and templates of its own.
 */
import type { OffsetDirection } from '../consequences/channel-particulars.ts';
import type { ThingKind } from '../consequences/hangs-on.ts';
import type { Standing } from '../consequences/outages.ts';
import type { Severity } from '../findings/finding.ts';
import type { Cards, EntryField, Grade } from '../plan/model.ts';
import type { Heard } from '../reach/heard.ts';
import type { Verdict } from '../reach/verdict.ts';

export interface Words {
  readonly language: string;
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
  /** What a station needs, and how long it runs without: `Valley power feeder, 12 h without`. */
  needs(things: readonly string[], backup: string): string;
  /** What is left of a rung without a radio. */
  rungWord: string;
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
    open(title: string, net: string, channel: string): string;
    readonly urgent: string;
    readonly check: string;
    missed(ladder: string): string;
    close(net: string): string;
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
}

export const english: Words = {
  language: 'en',
  direction: { none: 'none', minus: 'minus', plus: 'plus' },
  grade: { primary: 'First', alternate: 'Then', contingency: 'Then', emergency: 'No radio' },
  noElevation: (from, to, of) => `No elevation data from ${from} to ${to} km of ${of} km.`,
  neitherTransmits: 'Neither station transmits.',
  heard: { readable: 'readable', weak: 'weak', broken: 'broken', nothing: 'nothing heard' },
  field: {
    receive: 'Receive',
    transmit: 'Transmit',
    step: 'Step',
    mode: 'Mode',
    'offset-direction': 'Offset direction',
    offset: 'Offset',
    'tone-kind': 'Tone kind',
    tone: 'Tone',
    'receive-tone': 'Receive tone',
    width: 'Width',
    power: 'Power',
    name: 'Name',
  },
  dayShort: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  everyDay: 'every day',
  weekdays: 'Mon to Fri',
  weekends: 'Sat, Sun',
  utc: 'UTC',
  hours: 'h',
  listenOnly: 'listen only',
  none: 'none',
  any: 'any',
  anyPower: 'any (never transmit)',
  toneKind: { ctcss: 'CTCSS', dcs: 'DCS', none: 'none' },
  flip: { 'long-edge': 'long edge', 'short-edge': 'short edge' },
  monthShort: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  dayAndMonth: (day, month) => `${day} ${month}`,
  untried: 'untried',
  tried: (date, heard) =>
    `tried ${date}: ${heard.map(({ place, heard: how }) => `${place} ${how}`).join(', ')}`,
  toneBack: (tone) => `tone back ${tone}`,
  verdict: { solid: 'solid', likely: 'likely', doubtful: 'doubtful', no: 'no' },
  severity: { error: 'error', warning: 'warning', note: 'note' },
  standing: { 'off the air': 'off the air', 'cut off': 'cut off' },
  thing: {
    place: 'place',
    asset: 'asset',
    repeater: 'repeater',
    digipeater: 'digipeater',
    mailbox: 'mailbox',
    channel: 'channel',
    member: 'member',
  },
  atOnce: 'at once',
  after: (length) => `after ${length}`,
  needs: (things, backup) =>
    things.length === 0
      ? `runs ${backup} on its own`
      : `${things.join(', ')}${backup === '' ? '' : `; runs ${backup} without`}`,
  rungWord: 'rung',
  figure: {
    day: 'The check-ins of a day on a strip of 24 hours; the table below says the same in words.',
    net: 'Which stations and channels members hang on, first calls with thick lines, later rungs with dashed ones, and dotted ones where they only listen; the ladders say the same in words.',
    bands:
      'Each channel on the scale of its band, a dot where it receives and a ring where it transmits; the channel table says the same in figures.',
    profile: (from, to, clearance) => `The ground from ${from} to ${to}. ${clearance}`,
    code: 'A code for telephones that says the channel list and the plan check again.',
  },
  script: {
    open: (title, net, channel) =>
      `"This is [your call sign], net control of ${title}, opening the ${net} on ${channel}."`,
    urgent: '"Anybody with urgent traffic, call now."',
    check: 'Ask the reader of the day for the plan check from their own card; compare it with this page.',
    missed: (ladder) => `Who does not answer: call twice more, then start the ladder "${ladder}".`,
    close: (net) => `"The ${net} is closed. This is [your call sign], clear."`,
  },
  testSheet: {
    title: 'Printer test sheet',
    front:
      'Print this sheet at 100 %, on both sides, turned as your cards will be. The ruler must measure 100 mm. Then hold the sheet against the light and read the other side.',
    back: 'Against the light each cross of the front falls on a scale: read how far right and how far down. Write the middle of the readings into the plan under cards, back-shift: [right, down], in mm.',
  },
  calls: (count) => (count === 1 ? '1 call' : `${count} calls`),
  from: (place) => `from ${place}`,
  mailbox: (name, through) =>
    `message to ${name}${through.length === 0 ? '' : ` through ${through.join(', ')}`}`,
  meet: (place, when) => `Meet: ${place}${when === undefined ? '' : `, ${when}`}`,
  everyDays: (every) => (every === 1 ? 'every day' : `every ${ordinal(every)} day`),
  everyWeeks: (every) => `every ${ordinal(every)} week`,
  dayOfMonth: (day) => `${ordinal(day)} of the month`,
  weekdayOfMonth: (which, day) => `${which === -1 ? 'last' : ordinal(which)} ${day} of the month`,
  until: (date) => `until ${date}`,
};

/** `1st`, `2nd`, `11th`, `22nd` */
function ordinal(number: number): string {
  const teen = number % 100 >= 11 && number % 100 <= 13;
  return `${number}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th')}`;
}
