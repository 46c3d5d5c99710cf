/**
 * Reading what a radio's display shows, as a person copies it: 146.94, 146.940, 146940 and 146.940.00 are one
 * frequency; minus, - and a real minus sign are one direction; 100 and 100.0 are one tone.
 *
 * Tolerant of spelling, never of value: what could mean two things is not read at all, and the message says how
 * to write it.
 */
import type { OffsetDirection } from '../consequences/channel-particulars.ts';
import type { PowerSetting } from '../consequences/use.ts';
import type { EntryField, Mode, Radio } from '../plan/model.ts';
import { standardTone } from '../radio/ctcss.ts';
import { isDcsCode } from '../radio/dcs.ts';
import { isWhole, multiply, parseDecimal, toNumber } from '../radio/decimal.ts';
import { formatPower, formatSpacing } from '../radio/format-quantity.ts';
import { parseTone, type Tone } from '../radio/tone.ts';

/** A frequency as far as the display shows it. */
export interface ShownFrequency {
  readonly frequencyHz: number;
  /** What the last figure shown counts; 1000 where three decimals of a megahertz are shown. */
  readonly resolutionHz: number;
}

/** A tone; many displays leave out whether a digital code is inverted. */
export interface ShownTone {
  readonly tone: Tone;
  readonly senseShown: boolean;
}

/** What was read of one channel. A field that is absent was not read. */
export interface ShownValues {
  readonly receive?: ShownFrequency;
  readonly transmit?: ShownFrequency | 'none';
  readonly stepHz?: number | 'none';
  readonly mode?: Mode;
  readonly direction?: OffsetDirection;
  readonly offsetHz?: number;
  readonly toneKind?: 'none' | 'ctcss' | 'dcs';
  readonly tone?: ShownTone | 'none';
  readonly receiveTone?: ShownTone | 'none';
  readonly spacingHz?: number;
  readonly power?: PowerSetting | 'none';
  readonly name?: string;
}

export type ShownReading =
  | { readonly ok: true; readonly values: ShownValues }
  | { readonly ok: false; readonly message: string };

const off = /^(?:off|none|no|nil|simplex|---?|–|—)$/i;

/**
 * @param text one cell or one answer, not blank
 * @param toneKind what the same channel shows as the kind of its tone, where that is known
 */
export function readShown(
  field: EntryField,
  text: string,
  radio: Radio,
  toneKind?: 'none' | 'ctcss' | 'dcs',
): ShownReading {
  const given = tidy(text);
  switch (field) {
    case 'receive': {
      const read = readFrequency(given);
      return read === undefined ? unclear(text, 'a frequency such as 146.940') : ok({ receive: read });
    }
    case 'transmit': {
      if (off.test(given) || /^listen( only)?$/i.test(given)) return ok({ transmit: 'none' });
      const read = readFrequency(given);
      return read === undefined
        ? unclear(text, 'a frequency such as 146.340, or none')
        : ok({ transmit: read });
    }
    case 'offset-direction':
      return readDirection(given, text);
    case 'offset':
      return readOffset(given, text);
    case 'step': {
      if (off.test(given) || /^auto$/i.test(given)) return ok({ stepHz: 'none' });
      const stepHz = readKilohertz(given);
      return stepHz === undefined ? unclear(text, 'a step such as 12.5') : ok({ stepHz });
    }
    case 'width':
      return readWidth(given, text, radio);
    case 'mode': {
      const mode = modes.get(given.toLowerCase().replace(/[\s-]/g, ''));
      return mode === undefined ? unclear(text, 'a mode such as FM') : ok({ mode });
    }
    case 'tone-kind': {
      const kind = toneKinds.get(given.toLowerCase());
      if (kind !== undefined) return ok({ toneKind: kind });
      return off.test(given) ? ok({ toneKind: 'none' }) : unclear(text, 'CTCSS, DCS or none');
    }
    case 'tone':
    case 'receive-tone': {
      const read = readTone(given, text, toneKind);
      if (typeof read === 'object' && 'message' in read) return { ok: false, message: read.message };
      return ok(field === 'tone' ? { tone: read } : { receiveTone: read });
    }
    case 'power':
      return readPower(given, text, radio);
    case 'name':
      return ok({ name: text.trim() });
  }
}

const modes: ReadonlyMap<string, Mode> = new Map([
  ['fm', 'fm'],
  ['nfm', 'fm'],
  ['fmn', 'fm'],
  ['wfm', 'fm'],
  ['am', 'am'],
  ['usb', 'ssb'],
  ['lsb', 'ssb'],
  ['ssb', 'ssb'],
  ['cw', 'cw'],
]);

const toneKinds: ReadonlyMap<string, 'ctcss' | 'dcs'> = new Map([
  ['ctcss', 'ctcss'],
  ['ct', 'ctcss'],
  ['tone', 'ctcss'],
  ['dcs', 'dcs'],
  ['cdcss', 'dcs'],
  ['dtcs', 'dcs'],
]);

function ok(values: ShownValues): ShownReading {
  return { ok: true, values };
}

function unclear(text: string, wanted: string): ShownReading {
  return { ok: false, message: `"${text.trim().slice(0, 40)}" is not ${wanted}` };
}

/** Real minus signs become hyphens; the apostrophe that keeps a spreadsheet from reckoning is dropped. */
function tidy(text: string): string {
  return text
    .trim()
    .replace(/^'/, '')
    .replace(/[\u2212\u2010\u2011]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** MHz, kHz or Hz by size: no plan has a channel below 1.7 MHz or above 3 GHz. */
function readFrequency(given: string): ShownFrequency | undefined {
  const unit = /\s*(mhz|khz|hz)$/i.exec(given)?.[1]?.toLowerCase();
  const bare = given.replace(/\s*(mhz|khz|hz)$/i, '').replace(/ /g, '');
  const groups = bare.replace(/,/g, '.').split('.');
  if (groups.length > 4 || !groups.every((group) => /^\d{1,12}$/.test(group))) return undefined;
  const [whole = '', ...rest] = groups;
  // 146.940.00: after the first point, points only part the figures into groups.
  const fraction = rest.join('');
  const size = Number(whole);
  const scale = unit === 'mhz' ? 6 : unit === 'khz' ? 3 : unit === 'hz' ? 0 : scaleOf(size, rest.length);
  if (scale === undefined || fraction.length > 9) return undefined;
  const number = parseDecimal(fraction === '' ? whole : `${whole}.${fraction}`);
  if (number === undefined) return undefined;
  const hertz = multiply(number, { digits: 10n ** BigInt(scale), decimals: 0 });
  if (!isWhole(hertz)) return undefined;
  const frequencyHz = toNumber(hertz);
  if (frequencyHz < 100_000 || frequencyHz > 10e9) return undefined;
  return { frequencyHz, resolutionHz: Math.max(1, 10 ** (scale - fraction.length)) };
}

function scaleOf(size: number, groupsAfter: number): 6 | 3 | 0 | undefined {
  if (size < 3000) return size < 1 ? undefined : 6;
  if (groupsAfter > 1) return undefined;
  return size < 1_700_000 ? 3 : 0;
}

function readDirection(given: string, text: string): ShownReading {
  const direction = directionOf(given);
  if (direction !== undefined) return ok({ direction });
  // Some displays show direction and size together.
  const both = readOffset(given, text);
  return both.ok && both.values.direction !== undefined
    ? both
    : unclear(text, 'a direction: plus, minus or none');
}

function directionOf(given: string): OffsetDirection | undefined {
  if (/^(?:\+|plus|\(\+\)|up|dup\+|pos|positive)$/i.test(given)) return 'plus';
  if (/^(?:-|minus|\(-\)|down|dup-|neg|negative)$/i.test(given)) return 'minus';
  return off.test(given) || given === '0' || /^(?:s|listen( only)?)$/i.test(given) ? 'none' : undefined;
}

/** `0.6`, `0.600`, `600 kHz`, `600`, `-0.6`; a bare whole number from 100 up is kilohertz. */
function readOffset(given: string, text: string): ShownReading {
  if (given === '-' || given === '+')
    return {
      ok: false,
      message: `"${text.trim()}" shows a direction and no size; the size is a number such as 0.6`,
    };
  if (off.test(given)) return ok({ offsetHz: 0 });
  const match = /^(\+|-|plus|minus)?\s*([\d.,]{1,16})\s*(mhz|khz|m|k)?$/i.exec(given);
  const number = parseDecimal((match?.[2] ?? '').replace(',', '.'));
  if (match === null || number === undefined) return unclear(text, 'an offset in MHz such as 0.6');
  const unit = match[3]?.toLowerCase().slice(0, 1);
  const kilo = unit === 'k' || (unit === undefined && number.decimals === 0 && number.digits >= 100n);
  const hertz = multiply(number, { digits: kilo ? 1000n : 1_000_000n, decimals: 0 });
  if (!isWhole(hertz)) return unclear(text, 'a whole number of hertz');
  const offsetHz = toNumber(hertz);
  const sign = match[1]?.toLowerCase();
  if (sign === undefined || offsetHz === 0) return ok({ offsetHz });
  return ok({ offsetHz, direction: sign === '+' || sign === 'plus' ? 'plus' : 'minus' });
}

function readKilohertz(given: string): number | undefined {
  const bare = given.replace(/\s*k(hz)?$/i, '').replace(',', '.');
  const number = parseDecimal(bare);
  if (number === undefined || number.digits <= 0n) return undefined;
  // Displays cut 6.25 to 6.2 and 8.33 stands for 8⅓: what is shown is what is meant, to a hertz.
  const hertz = multiply(number, { digits: 1000n, decimals: 0 });
  return isWhole(hertz) ? toNumber(hertz) : undefined;
}

/** `25`, `12.5 kHz`; wide and narrow are the widest and the narrowest this kind of radio has. */
function readWidth(given: string, text: string, radio: Radio): ShownReading {
  const word = given.toLowerCase();
  const sorted = radio.widthsHz.toSorted((a, b) => a - b);
  const named = /^(?:w|wide|fm)$/.test(word)
    ? sorted.at(-1)
    : /^(?:n|nar|narrow|nfm)$/.test(word)
      ? sorted[0]
      : undefined;
  const spacingHz = named ?? readKilohertz(given);
  const has = radio.widthsHz.map(formatSpacing).join(', ');
  return spacingHz === undefined
    ? unclear(text, `a width${has === '' ? ' such as 12.5 kHz' : `; this radio has ${has}`}`)
    : ok({ spacingHz });
}

function readTone(
  given: string,
  text: string,
  kind: 'none' | 'ctcss' | 'dcs' | undefined,
): ShownTone | 'none' | { readonly message: string } {
  if (off.test(given) || given === '0' || given === '-') return 'none';
  const bare = given.replace(/^(?:ctcss|ct|t|tone|dcs|cdcss)[ :]+/i, '').replace(',', '.');
  const digital = /^d?\s*(\d{3})\s*([ni])?$/i.exec(bare) ?? /^d([ni])\s*(\d{3})$/i.exec(bare);
  if (digital !== null) {
    const [code = '', sense] = /^\d/.test(digital[1] ?? '')
      ? [digital[1], digital[2]]
      : [digital[2], digital[1]];
    const marked = /^d/i.test(given) || sense !== undefined || code.startsWith('0') || kind === 'dcs';
    const whole = standardTone(Number(code) * 10) !== undefined;
    if (marked && isDcsCode(code)) {
      return {
        tone: { kind: 'dcs', code, inverted: sense?.toUpperCase() === 'I' },
        senseShown: sense !== undefined,
      };
    }
    if (!whole && isDcsCode(code)) {
      return {
        message: `"${text.trim()}" could be a digital code or a tone cut short; write D${code}N, D${code}I or the tone to a tenth`,
      };
    }
  }
  const reading = parseTone(bare);
  return reading.ok
    ? { tone: reading.value, senseShown: true }
    : { message: `"${text.trim().slice(0, 40)}" is not a tone such as 100.0, a code such as D023N, or none` };
}

/** A setting by its name, the beginning of its name, or its watts. */
function readPower(given: string, text: string, radio: Radio): ShownReading {
  // On a channel that is only listened to a worksheet asks for no setting, and its words may be copied.
  if (off.test(given) || /^(?:any|beliebig)(?: \(.*\))?$/i.test(given)) return ok({ power: 'none' });
  const settings = [...radio.powersW].map(([name, powerW]) => ({ name, powerW }));
  const match = /^([a-z][a-z0-9-]*)?\s*(?:([\d.]{1,8})\s*(w|mw)?)?$/i.exec(given);
  const word = match?.[1]?.toLowerCase();
  const number = match?.[2] === undefined ? undefined : parseDecimal(match[2]);
  const powerW =
    number === undefined ? undefined : toNumber(number) / (match?.[3]?.toLowerCase() === 'mw' ? 1000 : 1);
  const fits = settings.filter(
    (setting) =>
      (word === undefined || setting.name === word || setting.name.startsWith(word)) &&
      (powerW === undefined || setting.powerW === powerW),
  );
  const exact = fits.find((setting) => setting.name === word) ?? (fits.length === 1 ? fits[0] : undefined);
  if (match !== null && (word !== undefined || powerW !== undefined) && exact !== undefined)
    return ok({ power: exact });
  const has = settings.map((setting) => `${setting.name} ${formatPower(setting.powerW)}`).join(', ');
  return unclear(text, has === '' ? 'a power setting' : `one of this radio's settings, ${has}`);
}
