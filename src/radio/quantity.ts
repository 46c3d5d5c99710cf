/**
 * Reading quantities as people write them in a plan: `5 W`, `600 kHz`, `2000 ft`, `-5 dBd`, or a bare number
 * that takes the usual unit of its kind.
 *
 * Pass the source text of a value where there is one: YAML has already turned 146.520 into a binary
 * fraction, while the text still has the digits that were written.
 */
import { add, type Decimal, isWhole, multiply, parseDecimal, toNumber } from './decimal.ts';

/**
 * What a quantity measures, and the unit its value comes back in:
 *
 * | dimension | bare number | value |
 * | --- | --- | --- |
 * | frequency, frequencyOffset | MHz | whole hertz |
 * | spacing | kHz | whole hertz |
 * | power | W | watts |
 * | length | m | metres |
 * | duration | min | seconds |
 * | gain | refused | dB over an isotropic antenna |
 * | level | refused | dBm |
 * | energy | Wh | watt-hours |
 * | current | A | amperes |
 * | voltage | V | volts |
 * | loss | dB | decibels |
 * | ratio | refused | a fraction, 1 being 100 % |
 */
export type Dimension =
  | 'frequency'
  | 'frequencyOffset'
  | 'spacing'
  | 'power'
  | 'length'
  | 'duration'
  | 'gain'
  | 'level'
  | 'energy'
  | 'current'
  | 'voltage'
  | 'loss'
  | 'ratio';

export type QuantityReading =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      /** One sentence: what was written and what was expected. */
      readonly message: string;
      /** The units that would fit, as they are written. */
      readonly fits: readonly string[];
    };

export interface QuantityOptions {
  /** Whether a value below zero is meant, where the dimension leaves it open: an elevation may be below the sea. */
  readonly negative?: boolean;
}

interface Unit {
  /** As it is written; the first spelling is the one messages use. */
  readonly spellings: readonly string[];
  readonly factor: string;
  /** Added after the factor, in the unit of the result. */
  readonly plus?: string;
  /** For units whose scale is not a straight line. */
  readonly convert?: (value: number) => number;
}

interface Measure {
  readonly noun: string;
  readonly units: readonly Unit[];
  /** The unit of a bare number; absent where a bare number would be a guess. */
  readonly bare?: string;
  readonly wholeHertz?: boolean;
  readonly lowest: 'above zero' | 'zero' | 'negative';
  readonly example: string;
}

const hertz: readonly Unit[] = [
  { spellings: ['MHz', 'Mhz', 'mhz', 'MHZ'], factor: '1000000' },
  { spellings: ['kHz', 'KHz', 'khz', 'KHZ', 'Khz'], factor: '1000' },
  { spellings: ['Hz', 'hz', 'HZ'], factor: '1' },
  { spellings: ['GHz', 'Ghz', 'ghz', 'GHZ'], factor: '1000000000' },
];

// `mW` and `MW` differ by nine powers of ten, so spellings are listed one by one and case is never ignored.
const measures: Readonly<Record<Dimension, Measure>> = {
  frequency: {
    noun: 'A frequency',
    units: hertz,
    bare: 'MHz',
    wholeHertz: true,
    lowest: 'above zero',
    example: '146.940',
  },
  frequencyOffset: {
    noun: 'An offset',
    units: hertz,
    bare: 'MHz',
    wholeHertz: true,
    lowest: 'negative',
    example: '-0.6 MHz',
  },
  spacing: {
    noun: 'A channel spacing',
    units: hertz,
    bare: 'kHz',
    wholeHertz: true,
    lowest: 'above zero',
    example: '12.5 kHz',
  },
  power: {
    noun: 'A power',
    units: [
      { spellings: ['W', 'w', 'watt', 'watts'], factor: '1' },
      { spellings: ['mW'], factor: '0.001' },
      { spellings: ['kW', 'KW', 'kw'], factor: '1000' },
    ],
    bare: 'W',
    lowest: 'above zero',
    example: '5 W',
  },
  length: {
    noun: 'A length',
    units: [
      { spellings: ['m', 'metre', 'metres', 'meter', 'meters'], factor: '1' },
      { spellings: ['km', 'Km'], factor: '1000' },
      // International foot and mile, exact by definition since 1959.
      { spellings: ['ft', 'feet', 'foot', "'"], factor: '0.3048' },
      { spellings: ['mi', 'mile', 'miles'], factor: '1609.344' },
      { spellings: ['cm'], factor: '0.01' },
    ],
    bare: 'm',
    lowest: 'zero',
    example: '612 m',
  },
  duration: {
    noun: 'A time',
    units: [
      { spellings: ['min', 'mins', 'minute', 'minutes'], factor: '60' },
      { spellings: ['s', 'sec', 'second', 'seconds'], factor: '1' },
      { spellings: ['h', 'hr', 'hour', 'hours'], factor: '3600' },
      { spellings: ['d', 'day', 'days'], factor: '86400' },
      { spellings: ['ms'], factor: '0.001' },
    ],
    bare: 'min',
    lowest: 'zero',
    example: '10 min',
  },
  gain: {
    noun: 'An antenna gain',
    units: [
      { spellings: ['dBi', 'dbi', 'dBI'], factor: '1' },
      // A half-wave dipole has 2.15 dB over an isotropic antenna (Recommendation ITU-R BS.561; RR No. 1.160 to 1.162).
      { spellings: ['dBd', 'dbd', 'dBD'], factor: '1', plus: '2.15' },
    ],
    lowest: 'negative',
    example: '-5 dBd',
  },
  level: {
    noun: 'A signal level',
    units: [
      { spellings: ['dBm', 'dbm', 'dBM'], factor: '1' },
      { spellings: ['uV', 'µV', 'μV', 'uv'], factor: '1', convert: microvoltsToDbm },
    ],
    lowest: 'negative',
    example: '-119 dBm',
  },
  energy: {
    noun: 'An energy',
    units: [
      { spellings: ['Wh', 'wh', 'WH'], factor: '1' },
      { spellings: ['mWh'], factor: '0.001' },
      { spellings: ['kWh', 'KWh', 'kwh'], factor: '1000' },
    ],
    bare: 'Wh',
    lowest: 'zero',
    example: '14.8 Wh',
  },
  current: {
    noun: 'A current',
    units: [
      { spellings: ['A', 'a', 'amp', 'amps'], factor: '1' },
      { spellings: ['mA', 'ma'], factor: '0.001' },
    ],
    bare: 'A',
    lowest: 'zero',
    example: '60 mA',
  },
  voltage: {
    noun: 'A voltage',
    units: [
      { spellings: ['V', 'v', 'volt', 'volts'], factor: '1' },
      { spellings: ['mV'], factor: '0.001' },
    ],
    bare: 'V',
    lowest: 'above zero',
    example: '7.4 V',
  },
  loss: {
    noun: 'A loss',
    units: [{ spellings: ['dB', 'db', 'DB'], factor: '1' }],
    bare: 'dB',
    lowest: 'zero',
    example: '1.5 dB',
  },
  ratio: {
    noun: 'A share',
    units: [{ spellings: ['%', 'percent'], factor: '0.01' }],
    lowest: 'zero',
    example: '50 %',
  },
};

const written = /^([+-]?[0-9.]+)\s*([^\s0-9.,:;+-][^\s]*)?$/u;

/** Reads one written quantity. Never throws: what cannot be read comes back as a sentence and the units that fit. */
export function readQuantity(
  text: string | number,
  dimension: Dimension,
  options: QuantityOptions = {},
): QuantityReading {
  const measure = measures[dimension];
  const given = String(text).trim();
  const refuse = (message: string): QuantityReading => ({
    ok: false,
    message,
    fits: unitsThatFit(dimension),
  });

  const match = written.exec(given.replace(/^[\u2212\u2013]/u, '-'));
  const number = match === null ? undefined : parseDecimal(match[1] ?? '');
  if (match === null || number === undefined) return refuse(unreadable(given, measure));

  const unitText = match[2] ?? measure.bare;
  if (unitText === undefined) {
    return refuse(
      `${measure.noun} needs its unit, ${listed(unitsThatFit(dimension))}; ${shown(given)} has none.`,
    );
  }
  const unit = measure.units.find((candidate) => candidate.spellings.includes(unitText));
  if (unit === undefined) {
    return refuse(
      `${measure.noun} is written in ${listed(unitsThatFit(dimension))}, not in ${shown(unitText)}.`,
    );
  }
  return inUnit(number, unit, measure, options) ?? refuse(outOfRange(number, unit, given, measure));
}

/** The units a quantity of this dimension may be written in, the usual one first. */
export function unitsThatFit(dimension: Dimension): readonly string[] {
  return measures[dimension].units.map((unit) => unit.spellings[0] ?? '');
}

function inUnit(
  number: Decimal,
  unit: Unit,
  measure: Measure,
  options: QuantityOptions,
): QuantityReading | undefined {
  const lowest = options.negative === true ? 'negative' : unit.convert ? 'above zero' : measure.lowest;
  if (number.digits < 0n && lowest !== 'negative') return undefined;
  if (number.digits === 0n && lowest === 'above zero') return undefined;
  const scaledBy = multiply(number, factorOf(unit.factor));
  const exact = unit.plus === undefined ? scaledBy : add(scaledBy, factorOf(unit.plus));
  if (measure.wholeHertz === true && !isWhole(exact)) return undefined;
  const value = toNumber(exact);
  return { ok: true, value: unit.convert === undefined ? value : unit.convert(value) };
}

function outOfRange(number: Decimal, unit: Unit, given: string, measure: Measure): string {
  if (measure.wholeHertz === true && !isWhole(multiply(number, factorOf(unit.factor)))) {
    return `${measure.noun} is a whole number of hertz; ${shown(given)} is finer than 1 Hz.`;
  }
  return number.digits === 0n
    ? `${measure.noun} is more than zero; this one is ${shown(given)}.`
    : `${measure.noun} is not negative; this one is ${shown(given)}.`;
}

/** Says which habit of writing is in the way, where it can be told. */
function unreadable(given: string, measure: Measure): string {
  const wanted = `write it like ${measure.example}`;
  if (given === '') return `${measure.noun} is missing; ${wanted}.`;
  if (/^[+-]?\d+,\d+/.test(given)) {
    return `${measure.noun} has a point, not a comma, before its decimals; ${shown(given)} is read as neither.`;
  }
  if (/^\d+:\d+/.test(given) && measure === measures.duration) {
    return `A length of time is a number and a unit; ${shown(given)} could be minutes or hours, so ${wanted}.`;
  }
  if (/^[+-]?[\d.]+e[+-]?\d+/i.test(given))
    return `${measure.noun} is written in plain digits; ${wanted}, not ${shown(given)}.`;
  return `${measure.noun} is one number and its unit; ${shown(given)} is not, so ${wanted}.`;
}

/** A signal of so many microvolts across 50 ohms, in dBm: P = U²/R, so 1 µV is -107.0 dBm. */
function microvoltsToDbm(microvolts: number): number {
  return 10 * Math.log10((microvolts * 1e-6) ** 2 / 50 / 1e-3);
}

function factorOf(text: string): Decimal {
  const factor = parseDecimal(text);
  if (factor === undefined) throw new RangeError(`The table of units holds ${text}, which is no number.`);
  return factor;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** Hostile or careless text may be of any length; a message shows only its beginning. */
function shown(text: string): string {
  return text.length > 40 ? `"${text.slice(0, 40)}…"` : `"${text}"`;
}
