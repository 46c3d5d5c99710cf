/**
 * How many keys it takes to enter a plan in a radio by hand, about how long that is, and in which order of slots
 * it takes least.
 *
 * A model of a keypad radio, of our own and from common practice, not of any one maker's:
 *
 * - a slot is chosen by its figures and kept with two keys; the radio proposes the values keyed in just before, so
 *   that a field which does not change costs nothing;
 * - a frequency or an offset is keyed figure by figure, and confirmed;
 * - any other field is reached with two keys, turned to step by step the shorter way round its list, and confirmed;
 *   changing the kind of tone costs two keys more, and begins at the head of the list;
 * - a letter of a name is found by pressing its key again and again, as on the keypad of ITU-T E.161 (02/2001), and
 *   one key moves on.
 *
 * A key takes 0.5 s and finding a value on the sheet 1.35 s: the operators K (typing random letters) and M of the
 * keystroke-level model (S. K. Card, T. P. Moran, A. Newell, Communications of the ACM 23, 1980, 396-410; figures
 * from memory). Reading back takes about as long again and is not counted.
 */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import { ctcssTones } from '../radio/ctcss.ts';
import { dcsCodes104 } from '../radio/dcs.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import { formatTone, type Tone } from '../radio/tone.ts';
import { askedFields } from './compare-entries.ts';
import { shortestOrder } from './shortest-order.ts';

const keyS = 0.5;
const findS = 1.35;

export interface EntryEffort {
  readonly keys: number;
  /** Fields that must be set, and those that stay as on the channel before. */
  readonly fieldsSet: number;
  readonly fieldsKept: number;
  readonly durationS: number;
  /** The order of slots that takes fewest keys. */
  readonly best: { readonly slots: readonly number[]; readonly keys: number };
}

/** In the order of the entries, which is that of the sheet. */
export function entryEffort(radio: Radio, entries: readonly Entry[]): EntryEffort {
  const fields = askedFields(radio);
  const steps = entries.map((entry, index) => stepKeys(radio, fields, entries[index - 1], entry));
  const keys = sum(steps.map((step) => step.keys));
  const fieldsSet = sum(steps.map((step) => step.fieldsSet));
  const order = shortestOrder(entries.length, (from, to) => {
    const entry = entries[to];
    return entry === undefined
      ? 0
      : stepKeys(radio, fields, from === undefined ? undefined : entries[from], entry).keys;
  });
  return {
    keys,
    fieldsSet,
    fieldsKept: fields.length * entries.length - fieldsSet,
    durationS: keys * keyS + (fieldsSet + entries.length) * findS,
    best: { slots: order.order.flatMap((at) => entries[at]?.slot ?? []), keys: order.cost },
  };
}

/** Keys for one channel after another; from a radio that was reset where there is none before. */
function stepKeys(
  radio: Radio,
  fields: readonly EntryField[],
  before: Entry | undefined,
  entry: Entry,
): { readonly keys: number; readonly fieldsSet: number } {
  const set = fields.map((field) => fieldKeys(radio, field, before, entry)).filter((keys) => keys > 0);
  return { keys: String(entry.slot).length + 2 + sum(set), fieldsSet: set.length };
}

const menu = 2;
const confirm = 1;

function fieldKeys(radio: Radio, field: EntryField, before: Entry | undefined, entry: Entry): number {
  switch (field) {
    case 'receive':
      return keyed(before?.receiveHz, entry.receiveHz, 0);
    case 'transmit':
      return entry.transmitHz === undefined ? 0 : keyed(before?.transmitHz, entry.transmitHz, menu);
    case 'offset':
      // Of a channel without a shift the size is left as it was.
      return entry.direction === 'none' ? 0 : keyed(before?.offsetHz, entry.offsetHz, menu);
    case 'offset-direction':
      return turned(directions, before?.direction ?? 'none', entry.direction);
    case 'step':
      return entry.stepHz === undefined
        ? 0
        : turned(radio.stepsHz, before?.stepHz ?? radio.stepsHz[0], entry.stepHz);
    case 'width':
      return turned(radio.widthsHz, before?.spacingHz ?? radio.widthsHz[0], entry.spacingHz);
    case 'mode':
      return turned(radio.modes, before?.mode ?? radio.modes[0], entry.mode);
    case 'power': {
      const settings = [...radio.powersW.keys()];
      return entry.power === undefined
        ? 0
        : turned(settings, before?.power?.name ?? settings[0], entry.power.name);
    }
    case 'tone-kind':
      return turned(toneKinds, before?.tone?.kind ?? 'none', entry.tone?.kind ?? 'none');
    case 'tone':
      return toneKeys(before?.tone, entry.tone, radio.entryOrder.includes('tone-kind'));
    case 'receive-tone':
      return toneKeys(before?.receiveTone, entry.receiveTone, false);
    case 'name':
      return before?.shown === entry.shown ? 0 : menu + nameKeys(entry.shown) + confirm;
  }
}

const directions = ['none', 'plus', 'minus'];
const toneKinds = ['none', 'ctcss', 'dcs'];

function keyed(beforeHz: number | undefined, frequencyHz: number, reach: number): number {
  if (beforeHz === frequencyHz) return 0;
  return reach + formatFrequency(frequencyHz).replace('.', '').length + confirm;
}

function turned(list: readonly unknown[], from: unknown, to: unknown): number {
  return from === to ? 0 : menu + around(list, from, to) + confirm;
}

/** Steps the shorter way round; one where a list lacks either. */
function around(list: readonly unknown[], from: unknown, to: unknown): number {
  const [at, wanted] = [list.indexOf(from), list.indexOf(to)];
  if (at === -1 || wanted === -1) return 1;
  const steps = Math.abs(at - wanted);
  return Math.max(1, Math.min(steps, list.length - steps));
}

const digitalCodes = dcsCodes104.flatMap((code) => [`D${code}N`, `D${code}I`]);
const subaudibleTones = ctcssTones.map(({ tenthsHz }) => formatTone({ kind: 'ctcss', tenthsHz }));

function toneKeys(before: Tone | undefined, tone: Tone | undefined, kindApart: boolean): number {
  if (before === undefined && tone === undefined) return 0;
  if (before !== undefined && tone !== undefined && formatTone(before) === formatTone(tone)) return 0;
  const kindKeys = kindApart || before?.kind === tone?.kind ? 0 : 2;
  if (tone === undefined) return kindApart ? 0 : menu + kindKeys + confirm;
  const list = tone.kind === 'dcs' ? digitalCodes : subaudibleTones;
  const from = before?.kind === tone.kind ? formatTone(before) : list[0];
  const to = formatTone(tone);
  return menu + kindKeys + (from === to ? 0 : around(list, from, to)) + confirm;
}

/** Letters of the keys 2 to 9, ITU-T E.161 (02/2001), figure 1; a figure comes after the letters of its key. */
const keypad = ['ABC2', 'DEF3', 'GHI4', 'JKL5', 'MNO6', 'PQRS7', 'TUV8', 'WXYZ9', ' 0', '1-/.'];

function nameKeys(name: string): number {
  const presses = [...name.toUpperCase()].map((letter) => {
    const key = keypad.find((letters) => letters.includes(letter));
    // A sign that no key has is looked for in a list.
    return (key === undefined ? 5 : key.indexOf(letter) + 1) + 1;
  });
  return sum(presses);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
