/**
 * Loss of an antenna that stands in or behind woodland, the other end being clear. Source: Recommendation ITU-R P.833-10 (09/2021) §2.1, eqs
 * (1) and (2), with the site most like a temperate wood of mixed trees 12 to 16 m high and an antenna at 1.5 m (St Petersburg).
 *
 * The specific attenuation is from memory of the same table. Fitted from 106 to 2118 MHz; below, extrapolated. Measured spread
 * at another site of that table: 8.7 dB.
 */

/** Frequency (MHz) and specific attenuation in vegetation (dB/m), from memory. */
const specificAttenuation = [
  [105.9, 0.04],
  [466.475, 0.12],
  [949, 0.17],
  [1852.2, 0.3],
  [2117.5, 0.34],
] as const;

/** Am = A1 f^alpha: what a wood takes at most, dB, however deep. */
export function deepestWoodlandLossDb(frequencyHz: number): number {
  return 1.37 * (frequencyHz / 1e6) ** 0.42;
}

/** @param depthM length of the path inside the wood, m. */
export function woodlandLossDb(frequencyHz: number, depthM: number): number {
  const most = deepestWoodlandLossDb(frequencyHz);
  return most * (1 - Math.exp((-Math.max(depthM, 0) * specificAttenuationDb(frequencyHz)) / most));
}

/** dB per metre for short depths, interpolated on logarithmic axes. */
export function specificAttenuationDb(frequencyHz: number): number {
  const mhz = frequencyHz / 1e6;
  let upper: number = specificAttenuation.findIndex(([each]) => each >= mhz);
  if (upper < 0) upper = specificAttenuation.length - 1;
  if (upper < 1) upper = 1;
  const [f0, g0] = specificAttenuation[upper - 1] ?? specificAttenuation[0];
  const [f1, g1] = specificAttenuation[upper] ?? specificAttenuation[1];
  return g0 * (g1 / g0) ** (Math.log(mhz / f0) / Math.log(f1 / f0));
}

/** The deepest stretch of wood that is assumed along a path leaving at a shallow angle, m; an assumption of this program. */
const deepestStretchM = 200;

/**
 * How far a path runs under trees before it comes out at their tops: their height above the antenna over the sine of the angle at which
 * the path leaves, at most {@link deepestStretchM}.
 */
export function depthUnderTreesM(treesM: number, antennaM: number, elevationRad: number): number {
  const aboveM = treesM - antennaM;
  if (aboveM <= 0) return 0;
  return elevationRad <= 0 ? deepestStretchM : Math.min(deepestStretchM, aboveM / Math.sin(elevationRad));
}
