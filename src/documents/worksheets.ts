/**
 * Entry worksheets: for each kind of radio every value to key in, in the order of that radio's menu, with
 * boxes for *entered* and *read back*. What is the same on every channel is said once, above.
 */
import { entryEffort } from '../audit/entry-effort.ts';
import type { Consequences } from '../consequences/consequences.ts';
import { type Entry, entriesOf } from '../consequences/entries.ts';
import type { EntryField, Member, Plan, Radio } from '../plan/model.ts';
import { formatPower, formatSpacing } from '../radio/format-quantity.ts';
import { formatTone, type Tone } from '../radio/tone.ts';
import { megahertz, offsetSize } from './figures.ts';
import type { Words } from './words.ts';

export interface WorksheetData {
  readonly title: string;
  readonly language: string;
  readonly revision: number;
  readonly effective: string;
  readonly check: string;
  readonly checkWords: string;
  readonly paper: 'Letter' | 'A4';
  readonly id: string;
  readonly radio: string;
  /** Members who hold this kind of radio. */
  readonly holders: readonly string[];
  /** Fields that have one value on every channel, in the order of the menu. */
  readonly same: readonly { readonly field: string; readonly value: string }[];
  /** The channels, three to a row of the sheet, each row filled up with empty places. */
  readonly rows: readonly { readonly places: readonly (WorksheetChannel | EmptyPlace)[] }[];
  /** Whether an empty place has room for the lines to sign on; else they stand below the channels. */
  readonly signedInPlace: boolean;
  readonly count: number;
  /** How long entering takes by this menu, an estimate. */
  readonly effort: WorksheetEffort;
}

/** A place beside the last channels; the last of them holds the lines to sign on. */
export interface EmptyPlace {
  readonly empty: true;
  readonly toSign: boolean;
}

export interface WorksheetEffort {
  readonly minutes: number;
  readonly keys: number;
  /** An order of slots that saves a twentieth of the keys or more; null where none does. */
  readonly better: { readonly slots: string; readonly saved: number } | null;
}

export interface WorksheetChannel {
  /** Which of how many, for a running count at the radio. */
  readonly number: number;
  readonly slot: number;
  readonly name: string;
  readonly empty: false;
  /** What to key in, in the order of the menu, without what is the same on every channel. */
  readonly entries: readonly {
    readonly field: string;
    readonly value: string;
    /** Differs from the channel before it, so that it must be changed and not only confirmed. */
    readonly differs: boolean;
  }[];
  readonly listenOnly: boolean;
  /** Who may transmit, where not every holder may; empty where all may. */
  readonly only: string;
}

/**
 * A sheet for each kind of radio that somebody holds and that holds a channel; with a member, theirs alone: it has
 * what they may do, whoever else may do more, and names nobody else.
 */
export function gatherWorksheets(
  plan: Plan,
  consequences: Consequences,
  check: string,
  words: Words,
  member?: Member,
): readonly WorksheetData[] {
  return [...plan.radios.values()]
    .filter((radio) => consequences.slotsOf(radio.id).length > 0)
    .filter((radio) => member === undefined || member.radios.includes(radio.id))
    .map((radio) => worksheet(plan, consequences, radio, check, words, member));
}

function worksheet(
  plan: Plan,
  consequences: Consequences,
  radio: Radio,
  check: string,
  words: Words,
  member: Member | undefined,
): WorksheetData {
  const order = radio.entryOrder.filter((field) => !(field === 'name' && radio.nameLength === 0));
  const entries = entriesOf(plan, consequences, radio, member?.id);
  const values = entries.map((entry) => order.map((field) => keyedValue(entry, field, words)));
  // A field with one value throughout is said once; with a single channel nothing is gained by that.
  const isSame = order.map(
    (_, column) => entries.length > 1 && new Set(values.map((row) => row[column])).size === 1,
  );
  const name = (id: string) => plan.members.get(id)?.name ?? id;
  const channels = entries.map(
    (entry, index): WorksheetChannel => ({
      number: index + 1,
      slot: entry.slot,
      // The second person reads the display aloud: the frame is headed by what stands there.
      name: entry.shown || entry.name,
      empty: false,
      entries: order.flatMap((field, column) => {
        const value = values[index]?.[column] ?? '';
        const differs = value !== values[index - 1]?.[column];
        // The frame itself says that it is for listening, and has no room to say so twice.
        const said = value === words.anyPower ? words.any : value;
        return isSame[column] ? [] : [{ ...labelled(words.field[field], said), differs }];
      }),
      listenOnly: entry.senders.length === 0,
      only:
        entry.senders.length > 0 && entry.senders.length < entry.holders.length
          ? entry.senders.map(name).join(', ')
          : '',
    }),
  );
  return {
    title: plan.title,
    language: words.language,
    revision: plan.revision,
    effective: plan.effective,
    check,
    checkWords: words.spelled(check),
    paper: plan.cards.sheet === 'letter' ? 'Letter' : 'A4',
    id: radio.id,
    radio: radio.name,
    holders: member === undefined ? consequences.holdersOf(radio.id).map(name) : [member.name],
    same: order.flatMap((field, column) =>
      isSame[column] ? [labelled(words.field[field], values[0]?.[column] ?? '')] : [],
    ),
    rows: inThrees(channels),
    signedInPlace: channels.length % 3 > 0,
    count: channels.length,
    effort: effortOf(radio, entries),
  };
}

function effortOf(radio: Radio, entries: readonly Entry[]): WorksheetEffort {
  const { keys, durationS, best } = entryEffort(radio, entries);
  const saved = keys - best.keys;
  return {
    minutes: Math.max(1, Math.round(durationS / 60)),
    keys,
    better: saved * 20 < keys ? null : { slots: best.slots.join(', '), saved },
  };
}

function inThrees(channels: readonly WorksheetChannel[]): WorksheetData['rows'] {
  return Array.from({ length: Math.ceil(channels.length / 3) }, (_, row) => ({
    places: [0, 1, 2].map((place) => channels[row * 3 + place] ?? { empty: true, toSign: place === 2 }),
  }));
}

/** One value as a radio shows it, in words and figures. */
export function entryValue(entry: Entry, field: EntryField, words: Words): string {
  switch (field) {
    case 'receive':
      return megahertz(entry.receiveHz);
    case 'transmit':
      return entry.transmitHz === undefined ? words.none : megahertz(entry.transmitHz);
    case 'step':
      return entry.stepHz === undefined ? words.none : formatSpacing(entry.stepHz);
    case 'mode':
      return entry.mode === 'packet' ? 'FM' : entry.mode.toUpperCase();
    case 'offset-direction':
      return words.direction[entry.direction];
    case 'offset':
      return entry.direction === 'none' ? words.none : offsetSize(entry);
    case 'tone-kind':
      return words.toneKind[entry.tone?.kind ?? 'none'];
    case 'tone':
      return entry.tone ? formatTone(entry.tone) : words.none;
    case 'receive-tone':
      return entry.receiveTone ? formatTone(entry.receiveTone) : words.none;
    case 'width':
      return formatSpacing(entry.spacingHz);
    case 'power':
      if (entry.power !== undefined) return `${entry.power.name} ${formatPower(entry.power.powerW)}`;
      // No radio can be set to no power at all.
      return entry.senders.length === 0 ? words.anyPower : words.none;
    case 'name':
      return entry.shown;
  }
}

/**
 * One value as paper has it for whoever keys it in: no figure without its unit, and as many decimals for an offset
 * as for a frequency, so that 0.600 MHz and 5.000 MHz are not taken for each other.
 */
export function keyedValue(entry: Entry, field: EntryField, words: Words): string {
  const plain = entryValue(entry, field, words);
  if (plain === words.none) return plain;
  switch (field) {
    case 'receive':
    case 'transmit':
      return `${plain} MHz`;
    case 'offset':
      return `${megahertz(entry.offsetHz)} MHz`;
    case 'tone':
      return `${plain}${toneUnit(entry.tone)}`;
    case 'receive-tone':
      return `${plain}${toneUnit(entry.receiveTone)}`;
    default:
      return plain;
  }
}

/** A frame has no room for `Offset direction` beside `146.940 MHz`: there the unit stands with the field. */
function labelled(field: string, value: string): { readonly field: string; readonly value: string } {
  const [, figures, unit] = /^(.*\d) (M?Hz)$/.exec(value) ?? [];
  return figures === undefined ? { field, value } : { field: `${field}, ${unit}`, value: figures };
}

/** A tone has its hertz; a code is a name and has no unit. */
function toneUnit(tone: Tone | undefined): string {
  return tone?.kind === 'ctcss' ? ' Hz' : '';
}
