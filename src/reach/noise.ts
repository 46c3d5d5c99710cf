/**
 * Radio noise from outside the receiver: what people's machines and the galaxy make.
 *
 * Source: Recommendation ITU-R P.372-10, tables 1 and 2 (man-made noise, median and deciles over place and time): `Fam = c - d log f`, dB above k T0 b,
 * f in MHz, for a short loss-free vertical antenna. Stated for 0.3 to 250 MHz; above, extrapolated, where it matters little.
 */
import { dbOfRatio, ratioOfDb } from './decibels.ts';

export type NoisePlace = 'city' | 'residential' | 'rural' | 'quiet-rural';

interface NoiseRow {
  readonly c: number;
  readonly d: number;
  /** What 90 % of places and times stay below, and 10 % fall under, dB from the median. */
  readonly upperDecileDb: number;
  readonly lowerDecileDb: number;
}

const manMade: Readonly<Record<NoisePlace, NoiseRow>> = {
  city: { c: 76.8, d: 27.7, upperDecileDb: 11, lowerDecileDb: 6.7 },
  residential: { c: 72.5, d: 27.7, upperDecileDb: 10.6, lowerDecileDb: 5.3 },
  rural: { c: 67.2, d: 27.7, upperDecileDb: 9.2, lowerDecileDb: 4.6 },
  'quiet-rural': { c: 53.6, d: 28.6, upperDecileDb: 9.2, lowerDecileDb: 4.6 },
};
const galactic = { c: 52, d: 23 };

/** 10 log(k T0), T0 = 290 K, dBm in one hertz. */
const thermalNoiseDbmHz = dbOfRatio(1.380_649e-23 * 290 * 1000);

/** Median man-made noise figure Fam, dB. */
export function manMadeNoiseDb(place: NoisePlace, frequencyHz: number): number {
  const { c, d } = manMade[place];
  return c - d * Math.log10(frequencyHz / 1e6);
}

/** Median galactic noise figure, dB. */
export function galacticNoiseDb(frequencyHz: number): number {
  return galactic.c - galactic.d * Math.log10(frequencyHz / 1e6);
}

/**
 * Median noise figure of all that comes from outside, dB. Man-made and galactic noise are added as powers, but quiet rural and galactic are not: their
 * larger counts, since the quiet rural line was drawn with the sky in it. Never below 0: an antenna over warm ground sees at least its 290 K.
 */
export function externalNoiseDb(place: NoisePlace, frequencyHz: number): number {
  const made = manMadeNoiseDb(place, frequencyHz);
  const sky = galacticNoiseDb(frequencyHz);
  const both = place === 'quiet-rural' ? Math.max(made, sky) : dbOfRatio(ratioOfDb(made) + ratioOfDb(sky));
  return Math.max(0, both);
}

/** Noise power of a noise figure in a bandwidth, dBm. */
export function noisePowerDbm(noiseFigureDb: number, bandwidthHz: number): number {
  return thermalNoiseDbmHz + noiseFigureDb + dbOfRatio(bandwidthHz);
}

/** Spread of man-made noise over place and time, dB: the mean of its two deciles as one standard deviation (deciles lie 1.2816 of them out). */
export function noiseSpreadDb(place: NoisePlace): number {
  const { upperDecileDb, lowerDecileDb } = manMade[place];
  return (upperDecileDb + lowerDecileDb) / 2 / 1.2816;
}
