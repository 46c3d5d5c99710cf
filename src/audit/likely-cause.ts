/**
 * The likely cause of one wrong field. Slips that explain several fields at once are tried first, then what the
 * last revision or the channel keyed in before had, then the slips of one field.
 */
import type { Entry } from '../consequences/entries.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import { lookKey } from '../radio/confusable.ts';
import { ctcssTones } from '../radio/ctcss.ts';
import { dcsCodes104 } from '../radio/dcs.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import { formatTone, type Tone } from '../radio/tone.ts';
import type { Cause } from './cause.ts';
import { type DigitSlip, digitSlip } from './digit-slip.ts';
import { matchField, sameFrequency, sameTone } from './match-field.ts';
import type { EnteredChannel } from './read-entries.ts';

export interface WrongField {
  readonly field: EntryField;
  readonly channel: EnteredChannel;
  readonly entry: Entry;
  readonly radio: Radio;
  /** What the plan has in the slot keyed in just before. */
  readonly before: Entry | undefined;
  /** What the last revision had in this slot, where one is at hand. */
  readonly lastRevision: Entry | undefined;
}

export function likelyCause(wrong: WrongField): Cause | undefined {
  return ofBothFrequencies(wrong) ?? ofLastRevision(wrong) ?? ofBothTones(wrong) ?? ofOneField(wrong);
}

function ofBothFrequencies({ field, channel, entry }: WrongField): Cause | undefined {
  const { receive, transmit } = channel.shown;
  if (entry.transmitHz === undefined || receive === undefined) return undefined;
  if (entry.transmitHz !== entry.receiveHz && sameFrequency(receive, entry.transmitHz)) {
    if (field === 'receive' || field === 'transmit' || field === 'offset-direction')
      return {
        code: 'input-output-exchanged',
        text: `input and output are exchanged: ${formatFrequency(entry.transmitHz)} is what this channel transmits on`,
      };
  }
  if (field === 'transmit' && transmit !== undefined && transmit !== 'none') {
    const shiftHz = entry.transmitHz - entry.receiveHz;
    const asReceive = transmit.frequencyHz - receive.frequencyHz === shiftHz;
    if (asReceive && !sameFrequency(receive, entry.receiveHz))
      return { code: 'follows', text: 'it follows from the receive frequency' };
  }
  return undefined;
}

function ofLastRevision({ field, channel, lastRevision, radio }: WrongField): Cause | undefined {
  const had = lastRevision !== undefined && matchField(channel.shown, lastRevision, field, radio) === true;
  return had ? { code: 'last-revision', text: 'it is what the last revision had' } : undefined;
}

function ofBothTones({ field, channel, entry }: WrongField): Cause | undefined {
  const { tone, receiveTone } = channel.shown;
  if ((field !== 'tone' && field !== 'receive-tone') || tone === undefined || receiveTone === undefined)
    return undefined;
  if (entry.tone === undefined || receiveTone === 'none' || !sameTone(receiveTone, entry.tone))
    return undefined;
  if (tone === 'none' && !sameTone(receiveTone, entry.receiveTone))
    return { code: 'tone-on-receive', text: 'the tone was set on receive instead of transmit' };
  return entry.receiveTone !== undefined && sameTone(tone, entry.receiveTone)
    ? { code: 'tones-exchanged', text: 'the tones of transmit and receive are exchanged' }
    : undefined;
}

function ofOneField(wrong: WrongField): Cause | undefined {
  const { field, channel, entry, before, radio } = wrong;
  const { shown } = channel;
  const left = (): Cause | undefined =>
    before !== undefined && matchField(shown, before, field, radio) === true
      ? { code: 'left-from-before', text: `it was left as in slot ${before.slot}` }
      : undefined;
  switch (field) {
    case 'receive':
      return left() ?? ofFrequency(shown.receive?.frequencyHz, entry.receiveHz);
    case 'transmit':
      if (entry.transmitHz === undefined)
        return { code: 'can-transmit', text: 'a channel to listen to was entered so that it can transmit' };
      if (shown.transmit === 'none') return { code: 'offset-left-off', text: 'transmit was left unset' };
      return ofFrequency(shown.transmit?.frequencyHz, entry.transmitHz) ?? left();
    case 'offset-direction':
      if (entry.direction === 'none') {
        if (entry.transmitHz === undefined && entry.senders.length === 0)
          return { code: 'can-transmit', text: 'a channel to listen to was given a shift' };
        return left() ?? { code: 'offset-added', text: 'a shift was set on a channel that has none' };
      }
      return shown.direction === 'none'
        ? { code: 'offset-left-off', text: 'the shift was not switched on' }
        : { code: 'sign-swapped', text: 'the sign is swapped' };
    case 'offset':
      return ofOffset(wrong) ?? left();
    case 'tone':
    case 'receive-tone':
      return ofTone(wrong, left);
    case 'tone-kind':
      if (shown.toneKind === 'none') return { code: 'tone-missing', text: 'the tone was not switched on' };
      return entry.tone === undefined
        ? (left() ?? { code: 'tone-added', text: 'a tone was switched on where the plan has none' })
        : { code: 'tone-kind', text: 'the other kind of tone was chosen' };
    case 'width':
    case 'power':
    case 'mode':
    case 'step':
      return left() ?? { code: 'other-setting', text: `another setting of the menu was chosen` };
    case 'name':
      return ofName(shown.name ?? '', entry.shown);
  }
}

const slipWords: Readonly<Record<DigitSlip, string>> = {
  'digits-exchanged': 'two digits are exchanged',
  'one-digit-wrong': 'one digit is wrong',
  'digit-left-out': 'a digit was left out',
  'point-moved': 'the decimal point has moved',
};

function slip(shown: string, planned: string): Cause | undefined {
  const code = digitSlip(shown, planned);
  return code && { code, text: slipWords[code] };
}

function ofFrequency(shownHz: number | undefined, plannedHz: number): Cause | undefined {
  return shownHz === undefined ? undefined : slip(formatFrequency(shownHz), formatFrequency(plannedHz));
}

function ofOffset({ channel, entry }: WrongField): Cause | undefined {
  const { offsetHz } = channel.shown;
  if (offsetHz === undefined) return undefined;
  if (offsetHz === 0) return { code: 'offset-left-off', text: 'the size of the offset was not set' };
  if (entry.offsetHz === 0)
    return { code: 'offset-added', text: 'a shift was set on a channel that has none' };
  return slip(formatFrequency(offsetHz), formatFrequency(entry.offsetHz));
}

function ofTone({ field, channel, entry }: WrongField, left: () => Cause | undefined): Cause | undefined {
  const shown = field === 'tone' ? channel.shown.tone : channel.shown.receiveTone;
  const planned = field === 'tone' ? entry.tone : entry.receiveTone;
  if (shown === undefined) return undefined;
  if (shown === 'none') return { code: 'tone-missing', text: 'the tone was not set' };
  if (planned === undefined) {
    if (field === 'tone' && entry.transmitHz === undefined)
      return { code: 'can-transmit', text: 'a channel to listen to was given a tone to send' };
    return left() ?? { code: 'tone-added', text: 'a tone was set where the plan has none' };
  }
  if (shown.tone.kind !== planned.kind)
    return left() ?? { code: 'tone-kind', text: 'it is the other kind of tone' };
  if (shown.tone.kind === 'dcs' && planned.kind === 'dcs' && shown.tone.code === planned.code)
    return { code: 'code-inverted', text: 'the code is inverted where it should be normal, or the reverse' };
  return (
    left() ??
    (isNext(shown.tone, planned)
      ? { code: 'next-tone', text: 'it is the next tone in the list' }
      : undefined) ??
    slip(digits(shown.tone), digits(planned))
  );
}

function digits(tone: Tone): string {
  return tone.kind === 'dcs' ? tone.code : formatTone(tone);
}

/** One step of the list away. Radios differ in which list they have, so a neighbour in the longest or the shorter one counts. */
function isNext(a: Tone, b: Tone): boolean {
  const lists: readonly (readonly (number | string)[])[] =
    a.kind === 'dcs'
      ? [dcsCodes104]
      : ([50, 42, 38] as const).map((set) =>
          ctcssTones.filter((tone) => tone.set <= set).map((tone) => tone.tenthsHz),
        );
  const key = (tone: Tone) => (tone.kind === 'dcs' ? tone.code : tone.tenthsHz);
  return lists.some((list) => {
    const [at, to] = [list.indexOf(key(a)), list.indexOf(key(b))];
    return at !== -1 && to !== -1 && Math.abs(at - to) === 1;
  });
}

function ofName(shown: string, planned: string): Cause | undefined {
  const [a, b] = [shown.trim().toUpperCase(), planned.toUpperCase()];
  if (lookKey(a) === lookKey(b)) return { code: 'looks-alike', text: 'characters that look alike' };
  if (b.startsWith(a)) return { code: 'name-cut', text: 'the end of the name is missing' };
  const at = [...a].flatMap((letter, index) => (letter === b[index] ? [] : [index]));
  const [first = 0, second = 0] = at;
  if (a.length === b.length && at.length === 2 && a[first] === b[second] && a[second] === b[first])
    return { code: 'letters-exchanged', text: 'two letters are exchanged' };
  const nearly =
    Math.abs(a.length - b.length) === 1 &&
    [...long(a, b)].some((_, index) => without(long(a, b), index) === short(a, b));
  return (a.length === b.length && at.length === 1) || nearly
    ? { code: 'one-letter', text: 'one letter is wrong, missing or too many' }
    : undefined;
}

const long = (a: string, b: string) => (a.length > b.length ? a : b);
const short = (a: string, b: string) => (a.length > b.length ? b : a);
const without = (text: string, index: number) => text.slice(0, index) + text.slice(index + 1);
