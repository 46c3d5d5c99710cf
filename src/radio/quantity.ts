/**
 * Reading quantities as people write them in a plan: `5 W`, `600 kHz`, `2000 ft`, `-5 dBd`, or a bare number
 * that takes the usual unit of its kind.
 *
 * Pass the source text of a value where there is one: YAML has already turned 146.520 into a binary
 * fraction, while the text still has the digits that were written.
 */
import { add, type Decimal, isWhole, multiply, parseDecimal, toNumber } from './decimal.ts';
import { type Measure, measures, type Unit, unitsThatFit } from './units.ts';

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
    return `${measure.noun} has a point, not a comma, before its decimals; this one is ${shown(given)}.`;
  }
  if (/^\d+:\d+/.test(given) && measure === measures.duration) {
    return `A length of time is a number and a unit; ${shown(given)} could be minutes or hours, so ${wanted}.`;
  }
  if (/^[+-]?[\d.]+e[+-]?\d+/i.test(given))
    return `${measure.noun} is written in plain digits; ${wanted}, not ${shown(given)}.`;
  return `${measure.noun} is one number and its unit; ${shown(given)} is not, so ${wanted}.`;
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
