/**
 * Sub-audible tones (continuous tone-coded squelch): the standard ones, and which are too close to each
 * other or to a harmonic of the mains to serve.
 *
 * The tones of TIA-603-D (2009), clause 1.3.5.2. The 38 of the older EIA set and the groups A, B and C were
 * read in several public tables that agree; which four more make the 42 of TIA-603, which eight more make
 * the 50 that many radios offer, and the letters of the tones from 233.6 Hz up and of 206.5, 229.1 and
 * 254.1 Hz, are from memory.
 */
export interface CtcssTone {
  /** Tenths of a hertz, so that a tone is a whole number: 100.0 Hz is 1000. */
  readonly tenthsHz: number;
  /** The smallest set that has it: the 38, the 42 or the 50. */
  readonly set: 38 | 42 | 50;
  /** Tones of one group stand far enough apart to be used side by side. */
  readonly group?: 'A' | 'B' | 'C';
  /** A two-character name some radios show. No scheme of names is universal: never print it alone. */
  readonly letters?: string;
}

/** All 50, lowest first. */
export const ctcssTones: readonly CtcssTone[] = [
  { tenthsHz: 670, set: 38, group: 'A', letters: 'XZ' },
  { tenthsHz: 693, set: 42, letters: 'WZ' },
  { tenthsHz: 719, set: 38, group: 'B', letters: 'XA' },
  { tenthsHz: 744, set: 38, group: 'C', letters: 'WA' },
  { tenthsHz: 770, set: 38, group: 'A', letters: 'XB' },
  { tenthsHz: 797, set: 38, group: 'C', letters: 'WB' },
  { tenthsHz: 825, set: 38, group: 'B', letters: 'YZ' },
  { tenthsHz: 854, set: 38, group: 'C', letters: 'YA' },
  { tenthsHz: 885, set: 38, group: 'A', letters: 'YB' },
  { tenthsHz: 915, set: 38, group: 'C', letters: 'ZZ' },
  { tenthsHz: 948, set: 38, group: 'B', letters: 'ZA' },
  { tenthsHz: 974, set: 38, group: 'C', letters: 'ZB' },
  { tenthsHz: 1000, set: 38, group: 'A', letters: '1Z' },
  { tenthsHz: 1035, set: 38, group: 'B', letters: '1A' },
  { tenthsHz: 1072, set: 38, group: 'A', letters: '1B' },
  { tenthsHz: 1109, set: 38, group: 'B', letters: '2Z' },
  { tenthsHz: 1148, set: 38, group: 'A', letters: '2A' },
  { tenthsHz: 1188, set: 38, group: 'B', letters: '2B' },
  { tenthsHz: 1230, set: 38, group: 'A', letters: '3Z' },
  { tenthsHz: 1273, set: 38, group: 'B', letters: '3A' },
  { tenthsHz: 1318, set: 38, group: 'A', letters: '3B' },
  { tenthsHz: 1365, set: 38, group: 'B', letters: '4Z' },
  { tenthsHz: 1413, set: 38, group: 'A', letters: '4A' },
  { tenthsHz: 1462, set: 38, group: 'B', letters: '4B' },
  { tenthsHz: 1514, set: 38, group: 'A', letters: '5Z' },
  { tenthsHz: 1567, set: 38, group: 'B', letters: '5A' },
  { tenthsHz: 1598, set: 50 },
  { tenthsHz: 1622, set: 38, group: 'A', letters: '5B' },
  { tenthsHz: 1655, set: 50 },
  { tenthsHz: 1679, set: 38, group: 'B', letters: '6Z' },
  { tenthsHz: 1713, set: 50 },
  { tenthsHz: 1738, set: 38, group: 'A', letters: '6A' },
  { tenthsHz: 1773, set: 50 },
  { tenthsHz: 1799, set: 38, group: 'B', letters: '6B' },
  { tenthsHz: 1835, set: 50 },
  { tenthsHz: 1862, set: 38, group: 'A', letters: '7Z' },
  { tenthsHz: 1899, set: 50 },
  { tenthsHz: 1928, set: 38, group: 'B', letters: '7A' },
  { tenthsHz: 1966, set: 50 },
  { tenthsHz: 1995, set: 50 },
  { tenthsHz: 2035, set: 38, group: 'A', letters: 'M1' },
  { tenthsHz: 2065, set: 42, letters: '8Z' },
  { tenthsHz: 2107, set: 38, group: 'B', letters: 'M2' },
  { tenthsHz: 2181, set: 38, group: 'A', letters: 'M3' },
  { tenthsHz: 2257, set: 38, group: 'B', letters: 'M4' },
  { tenthsHz: 2291, set: 42, letters: '9Z' },
  { tenthsHz: 2336, set: 38, group: 'A', letters: 'M5' },
  { tenthsHz: 2418, set: 38, group: 'B', letters: 'M6' },
  { tenthsHz: 2503, set: 38, group: 'A', letters: 'M7' },
  { tenthsHz: 2541, set: 42, letters: '0Z' },
];

/** Nominal tones are remembered to a tenth; one public table prints 69.3 as 69.4. */
const byTenths = new Map(ctcssTones.map((tone) => [tone.tenthsHz, tone]));

/** The standard tone of just this frequency, if there is one. */
export function standardTone(tenthsHz: number): CtcssTone | undefined {
  return byTenths.get(tenthsHz);
}

/** The standard tone closest to a frequency by ratio; of two equally close, the lower. */
export function nearestTone(tenthsHz: number): CtcssTone {
  const distance = (tone: CtcssTone) => Math.abs(Math.log(tone.tenthsHz / tenthsHz));
  return ctcssTones.reduce((best, tone) => (distance(tone) < distance(best) ? tone : best));
}

/** How far two tones stand apart, as a percentage of the lower. */
export function separationPercent(aTenthsHz: number, bTenthsHz: number): number {
  const lower = Math.min(aTenthsHz, bTenthsHz);
  return (Math.abs(aTenthsHz - bTenthsHz) / lower) * 100;
}

export interface MainsHarmonic {
  readonly order: number;
  readonly frequencyHz: number;
  /** The tone less the harmonic, as a percentage of the harmonic. */
  readonly differencePercent: number;
}

/**
 * The harmonic of the mains within 1.5 % of a tone: hum there may open a squelch that nobody called.
 * Published tone tables mark 100.0, 118.8, 151.4 and 179.9 Hz for this reason, and the United Kingdom's list
 * in MPT 1306 leaves 100.0 Hz out.
 */
export function mainsHarmonicNear(tenthsHz: number, mainsHz: 50 | 60): MainsHarmonic | undefined {
  const order = Math.round(tenthsHz / (mainsHz * 10));
  if (order < 1) return undefined;
  const frequencyHz = order * mainsHz;
  const differencePercent = ((tenthsHz / 10 - frequencyHz) / frequencyHz) * 100;
  return Math.abs(differencePercent) <= 1.5 ? { order, frequencyHz, differencePercent } : undefined;
}

/**
 * The longest a decoder may take to open on a tone, seconds: 250 ms from 100 Hz up, and in proportion to
 * the period below (EIA RS-220 and TIA-603, from memory).
 */
export function decoderResponseS(tenthsHz: number): number {
  return 0.25 * Math.max(1, 1000 / tenthsHz);
}
