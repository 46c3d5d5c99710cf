/**
 * How long people walk. Ground slopes are rise over run along the way, uphill positive.
 *
 * Sources: W. Tobler, "Three presentations on geographical analysis and modeling", NCGIA Technical Report 93-1 (1993): hiking function, and
 * three fifths of it off paths. W. Naismith, Scottish Mountaineering Club Journal 2 (1892), p. 136: an hour for each three miles (here 5 km)
 * and one for each 2000 feet (600 m) of ascent.
 */

/** Share of the speed on a path that is left without one (Tobler). */
export const offPathFactor = 0.6;

/** Steeper than this either way (45 degrees) is climbing, not walking; this program's choice. */
const steepestWalkedSlope = 1;

/** Tobler's walking speed on a path, km/h: 6 on a gentle descent of 1 in 20, 5 on the level. */
export function toblerKmh(slope: number): number {
  return 6 * Math.exp(-3.5 * Math.abs(slope + 0.05));
}

/** Seconds for a step of so many metres on the map that rises so many; infinite where nobody walks. */
export function stepS(distanceM: number, riseM: number, isOnPath = false): number {
  const slope = riseM / distanceM;
  if (Math.abs(slope) > steepestWalkedSlope) return Number.POSITIVE_INFINITY;
  return (distanceM * 3.6) / (toblerKmh(slope) * (isOnPath ? 1 : offPathFactor));
}

/** Naismith's rule, seconds. Descent is free, which it is not: it serves to check Tobler's answer, which charges for steep descents. */
export function naismithS(distanceM: number, ascentM: number): number {
  return 3600 * (distanceM / 5000 + ascentM / 600);
}
