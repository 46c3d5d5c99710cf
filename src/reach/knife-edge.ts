/** Loss over a single knife edge. Source: Recommendation ITU-R P.526-15, §4.1. */

/**
 * `J(v)`, eq (31), dB. Below v = -0.78, where the first Fresnel zone is clear to 0.55 of its radius, there is no loss. Within 0.13 dB of
 * the Fresnel integrals from there to v = 20.
 */
export function knifeEdgeLossDb(v: number): number {
  if (v <= -0.78) return 0;
  return 6.9 + 20 * Math.log10(Math.hypot(v - 0.1, 1) + v - 0.1);
}

/**
 * The parameter `v` of an edge `heightM` above the straight line between the antennas (below it: negative), at so many metres
 * from each; eq (26).
 */
export function knifeEdgeParameter(
  heightM: number,
  lengthM: number,
  fromStartM: number,
  fromEndM: number,
): number {
  return heightM * Math.sqrt((2 / lengthM) * (1 / fromStartM + 1 / fromEndM));
}
