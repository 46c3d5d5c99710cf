/**
 * How far a single prediction may be off: one standard deviation of all that is not known, added in squares.
 *
 * The base is what planners reckon for a single terrain path, 6 to 10 dB (from memory), taken as 8; it holds the variation of the
 * signal over the place itself, which Recommendation ITU-R P.1812-8 §4.7 puts at 1.9 dB in a square of 100 m at 146 MHz.
 */

/** From memory: the middle of what planners reckon. */
export const modelSpreadDb = 8;

/** Fading over hours and days over land, dB at 50, 100, 150 km, by band (classic planning figures, from memory). */
const fadingKm = [0, 50, 100, 150] as const;
const fadingDb = { vhf: [0, 3, 7, 9], uhf: [0, 2, 5, 7] } as const;

/** P.1812-8 §4.7: spread over a square of side `sideM`, dB. */
export function locationSpreadDb(frequencyHz: number, sideM: number): number {
  return (0.52 + (0.024 * frequencyHz) / 1e9) * sideM ** 0.28;
}

export function fadingSpreadDb(frequencyHz: number, distanceM: number): number {
  const row = frequencyHz < 300e6 ? fadingDb.vhf : fadingDb.uhf;
  const km = Math.min(distanceM / 1000, 150);
  const upper = Math.max(
    1,
    fadingKm.findIndex((each) => each >= km),
  );
  const [k0, k1] = [fadingKm[upper - 1] ?? 0, fadingKm[upper] ?? 150];
  const [d0, d1] = [row[upper - 1] ?? 0, row[upper] ?? 0];
  return d0 + ((d1 - d0) * (km - k0)) / (k1 - k0);
}

/** Spread of a woodland allowance: about half of it, at most the 8.7 dB measured at one site of P.833 (the half is this program's judgement). */
export function woodlandSpreadDb(lossDb: number): number {
  return Math.min(lossDb / 2, 8.7);
}

/** A profile typed from a map misses what lies between its points (this program's judgement). */
export const typedProfileSpreadDb = 4;
