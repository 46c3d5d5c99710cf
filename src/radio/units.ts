/**
 * The units quantities are written in, with every spelling that is accepted.
 *
 * Spellings are listed one by one and case is never ignored: `mW` and `MW` differ by nine powers of ten.
 * Prefixes: the SI brochure, 9th edition (2019), table 7.
 */
import type { Dimension } from './quantity.ts';

export interface Unit {
  /** As it is written; the first spelling is the one messages use. */
  readonly spellings: readonly string[];
  readonly factor: string;
  /** Added after the factor, in the unit of the result. */
  readonly plus?: string;
  /** For units whose scale is not a straight line. */
  readonly convert?: (value: number) => number;
}

export interface Measure {
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

export const measures: Readonly<Record<Dimension, Measure>> = {
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

/** The units a quantity of this dimension may be written in, the usual one first. */
export function unitsThatFit(dimension: Dimension): readonly string[] {
  return measures[dimension].units.map((unit) => unit.spellings[0] ?? '');
}

/** A signal of so many microvolts across 50 ohms, in dBm: P = U²/R, so 1 µV is -107.0 dBm. */
function microvoltsToDbm(microvolts: number): number {
  return 10 * Math.log10((microvolts * 1e-6) ** 2 / 50 / 1e-3);
}
