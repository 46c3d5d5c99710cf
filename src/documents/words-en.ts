/**
 * The word list of documents in English, and the shape of every other: texts with the names of what is put into
 * them in braces. `templates/words.yaml` is this list as a file to begin another language from.
 *
 * A text by number has a form for single numbers (`1`), for all that end in certain figures (`ends-1`, the longest
 * ending first) and for every `other`, as many as the language needs. Of the maps that are empty here a list names what it wants otherwise; the rest stays as the plan and
 * the rules of the country write it.
 */

import { letterWords, plainFigures } from '../radio/spelling.ts';
import { atTheBody, estimate, noLimit } from '../reach/exposure.ts';

/** Forms by number; `other` is always there. */
export type Forms = Readonly<Record<string, string>>;
type Texts = Readonly<Record<string, string>>;

export const englishList = {
  /** BCP 47. */
  language: 'en',
  revision: 'Revision {revision}',
  direction: { none: 'none', minus: 'minus', plus: 'plus' },
  grade: { primary: 'First', alternate: 'Then', contingency: 'Then', emergency: 'No radio' },
  /** Of a path, in kilometres from its start. */
  'no-elevation': 'No elevation data from {from} to {to} km of {of} km.',
  'neither-transmits': 'Neither station transmits.',
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
  /** Days of the week, Monday first. */
  days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  'every-day': 'every day',
  weekdays: 'Mon to Fri',
  weekends: 'Sat, Sun',
  utc: 'UTC',
  /** After full hours of the clock: `07 10 13 h`. */
  hours: 'h',
  'listen-only': 'listen only',
  /** Letters by which a card tells a member's radios apart, the first for the first; a seventh has its number. */
  'radio-marks': ['A', 'B', 'C', 'D', 'E', 'F'],
  /** After a call sign or a channel: the radio, or radios, by their marks. */
  'on-radio': 'on {radio}',
  none: 'none',
  /** A service that asks nobody for a licence. */
  'no-licence': '{service}, no licence',
  /** The power of a channel that is only listened to: whatever the radio is set to. */
  any: 'any',
  'any-power': 'any (never transmit)',
  'tone-kind': { ctcss: 'CTCSS', dcs: 'DCS', none: 'none' },
  /** The edge a sheet is turned about, as the note on printing says it. */
  flip: { 'long-edge': 'long edge', 'short-edge': 'short edge' },
  /** Months, January first, as a card has room for them. */
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  'day-and-month': '{day} {month}',
  /** On a rung that nobody has tried from where the member may be. */
  untried: 'untried',
  /** What was heard from each place tried, the day with it. */
  tried: 'tried {date}: {heard}',
  'tried-from': '{place} {heard}',
  /** The tone needed to hear a channel. */
  'tone-back': 'tone back {tone}',
  verdict: { solid: 'solid', likely: 'likely', doubtful: 'doubtful', no: 'no' },
  severity: { error: 'error', warning: 'warning', note: 'note' },
  standing: { 'off-the-air': 'off the air', 'cut-off': 'cut off' },
  thing: {
    place: 'place',
    asset: 'asset',
    repeater: 'repeater',
    digipeater: 'digipeater',
    mailbox: 'mailbox',
    channel: 'channel',
    member: 'member',
  },
  'at-once': 'at once',
  /** All members of the plan, and all but some of them. */
  everybody: 'everybody',
  'everybody-but': 'everybody but {names}',
  after: 'after {span}',
  /** What a station needs, and how long it runs without. */
  needs: {
    things: '{things}',
    backup: 'runs {backup} on its own',
    both: '{things}; runs {backup} without',
  },
  /** What figures show, for whoever cannot see them. */
  figure: {
    day: 'The check-ins of a day on a strip of 24 hours; the table below says the same in words.',
    net: 'Which stations and channels members hang on, first calls with thick lines, later rungs with dashed ones, and dotted ones where they only listen; the ladders say the same in words.',
    bands:
      'Each channel on the scale of its band, a dot where it receives and a ring where it transmits; the channel table says the same in figures.',
    profile: 'The ground from {from} to {to}. {clearance}',
    code: 'A code for telephones that says the channel list and the plan check again.',
  },
  /** Lines of the roll-call script that hang on who calls whom. */
  script: {
    open: '"This is [your call sign], net control of {title}, opening the {net} on {channel}."',
    /** In a service without call signs. */
    'open-by-name': '"This is [your name], net control of {title}, opening the {net} on {channel}."',
    urgent: '"Anybody with urgent traffic, call now."',
    check: 'Ask the reader of the day for the plan check from their own card; compare it with this page.',
    missed: 'Who does not answer: call twice more, then start the ladder "{ladder}".',
    close: '"The {net} is closed. This is [your call sign], clear."',
    'close-by-name': '"The {net} is closed. This is [your name], clear."',
  },
  'test-sheet': {
    title: 'Printer test sheet',
    front:
      'Print this sheet at 100 %, on both sides, turned as your cards will be. The ruler must measure 100 mm. Then hold the sheet against the light and read the other side.',
    back: 'Against the light each cross of the front falls on a scale: read how far right and how far down. Write the middle of the readings into the plan under cards, back-shift: [right, down], in mm.',
  },
  calls: { 1: '{count} call', other: '{count} calls' } as Forms,
  from: 'from {place}',
  mailbox: 'message to {name}',
  'mailbox-through': 'message to {name} through {stations}',
  meet: 'Meet: {place}',
  'meet-at': 'Meet: {place}, {when}',
  /** `2nd`, as the next four say it. */
  ordinal: {
    'ends-1': '{number}st',
    'ends-2': '{number}nd',
    'ends-3': '{number}rd',
    'ends-11': '{number}th',
    'ends-12': '{number}th',
    'ends-13': '{number}th',
    other: '{number}th',
  } as Forms,
  'every-days': 'every {ordinal} day',
  'every-weeks': 'every {ordinal} week',
  'day-of-month': '{ordinal} of the month',
  'weekday-of-month': '{ordinal} {day} of the month',
  'last-of-month': 'last {day} of the month',
  until: 'until {date}',
  /** Beside both sides of the guest card on its sheet; letters, figures and hyphens. */
  'guest-card': 'general',
  calendar: {
    channel: 'Channel {slot} {name}.',
    listen: 'Listen; nobody calls the roll.',
    control: 'Net control: {names}.',
    turns: {
      day: 'Net control in turn, by the day: {names}.',
      week: 'Net control in turn, by the week: {names}.',
      time: 'Net control in turn, each time: {names}.',
    },
    missed: 'For who does not answer: {ladder}.',
    /** Title of the entry that stands on a member's own turn. */
    'your-turn': 'You are net control: {check-in}',
    'left-out': 'On {date} the clocks leave this time out: ask when it is held.',
    'comes-twice': 'On {date} this time comes twice: ask which is meant.',
    revision: 'Revision {revision}, plan check {check}.',
  },
  /** The list of changes since an older revision. */
  change: {
    thing: { 'check-in': 'check-in', ladder: 'ladder' },
    kind: { new: 'new', gone: 'no more', changed: 'changed' },
    was: '{field} {was} to {is}',
    nothing: 'none',
    clear: 'clear',
    field: {
      name: 'name',
      receive: 'receive',
      transmit: 'transmit',
      offset: 'offset',
      tone: 'tone',
      'receive-tone': 'tone back',
      width: 'width',
      mode: 'mode',
      power: 'power',
      use: 'use',
      channel: 'channel',
      days: 'days',
      at: 'time',
      until: 'end',
      repeats: 'repeats',
      lasts: 'length',
      listen: 'roll call or watch',
      who: 'members',
      control: 'net control',
      turn: 'turns',
      missed: 'ladder',
      reach: 'whom to reach',
      rungs: 'rungs',
      radios: 'radios',
      licences: 'licences',
      places: 'places',
    },
    /** Why a card of the older revision must not be used any more. */
    danger: {
      'slot-means-other': 'slot {subject} is on another frequency now',
      'slot-gone': 'slot {subject} is no more',
      'figures-changed': 'slot {subject} has other values',
      'listen-only-now': 'on slot {subject} they may no longer transmit',
      'first-call': 'the first call is now on {subject}',
      ladder: 'the ladder {subject} is another',
      'check-in': 'the check-in {subject} is another',
    },
  },
  /** Columns of the channel list in a spreadsheet, in their order. */
  columns: [
    'slot',
    'name',
    'receive MHz',
    'transmit MHz',
    'offset direction',
    'offset MHz',
    'tone sent',
    'tone needed to hear',
    'channel spacing',
    'emission',
    'service',
    'members who transmit',
    'members who only listen',
    'use',
  ],
  /** The plan check by voice: A to Z, 0 to 9. */
  spelling: { letters: letterWords, figures: plainFigures },
  exposure: { estimate, 'at-the-body': atTheBody, 'no-limit': noLimit },
  /** Services, and licence classes within them, by their ids. */
  services: {
    amateur: 'amateur',
    gmrs: 'GMRS',
    frs: 'FRS',
    murs: 'MURS',
    cb: 'CB',
    'uhf-cb': 'UHF CB',
    pmr446: 'PMR446',
    prs: 'PRS',
    weather: 'weather',
    interoperability: 'interoperability',
    'simple-uk-light': 'business radio',
  } as Texts,
  classes: {} as Readonly<Record<string, Texts>>,
  /** What is quoted from the rules of a country, by its code; `identify` by service, tables of exposure by `fcc` and `icnirp`. */
  rules: {} as Readonly<Record<string, RulesTexts>>,
  'exposure-limits': {} as Texts,
} as const satisfies ListShape;

interface RulesTexts {
  readonly caution?: string;
  readonly identify?: Texts;
}

interface ListShape {
  readonly [key: string]: unknown;
}

type Widened<Of> = Of extends string
  ? string
  : Of extends readonly string[]
    ? readonly string[]
    : { readonly [Key in keyof Of]: Widened<Of[Key]> };

export type WordList = Widened<typeof englishList>;
