/**
 * The curved earth under a radio path. The air bends waves downwards, which is reckoned as an earth of larger radius.
 * Sources: Recommendations ITU-R P.310 and P.1812-8 eqs (6), (7a).
 */

/** Effective radius for the median atmosphere, k = 4/3, in the round figure that ITU-R texts use, km. */
export const medianEarthRadiusKm = 8500;

/** Effective radius from the median fall of refractivity in the lowest kilometre, N-units per km (39 in temperate climates). */
export function effectiveEarthRadiusKm(refractivityFall: number): number {
  return (6371 * 157) / (157 - refractivityFall);
}

/** How far the ground bulges above the straight line between the ends, at so many km from them, m. */
export function earthBulgeM(fromStartKm: number, fromEndKm: number, radiusKm = medianEarthRadiusKm): number {
  return (500 * fromStartKm * fromEndKm) / radiusKm;
}

/** Distance to the horizon of a smooth earth from so many metres above it, km. Two antennas: add the two. */
export function radioHorizonKm(heightM: number, radiusKm = medianEarthRadiusKm): number {
  return Math.sqrt((2 * radiusKm * Math.max(heightM, 0)) / 1000);
}
