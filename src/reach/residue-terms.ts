/**
 * What the first term of the residue series needs of a radius, a frequency and the ground: eqs (29) to (32) and (35) of Recommendation ITU-R
 * P.1812-8 §4.3.3, over land.
 */
import type { Polarization } from './spherical-earth.ts';

export interface ResidueTerms {
  /** X of eq (31) for each km; beta Y of eq (32) for each metre of height. */
  readonly xPerKm: number;
  readonly perMetre: number;
  /** Least height term, `2 + 20 log K`, dB. */
  readonly leastDb: number;
}

const land = { permittivity: 22, conductivity: 0.003 };

export function residueTerms(
  radiusKm: number,
  frequencyHz: number,
  polarization: Polarization,
): ResidueTerms {
  const f = frequencyHz / 1e6;
  const a13 = Math.cbrt(radiusKm);
  const f13 = Math.cbrt(f);
  const imaginary = (18_000 * land.conductivity) / f;
  const horizontal = (0.36 * ((land.permittivity - 1) ** 2 + imaginary ** 2) ** -0.25) / (a13 * f13);
  const k =
    polarization === 'horizontal' ? horizontal : horizontal * Math.hypot(land.permittivity, imaginary);
  const k2 = k * k;
  const k4 = k2 * k2;
  const beta = (1 + 1.6 * k2 + 0.67 * k4) / (1 + 4.5 * k2 + 1.53 * k4);
  return {
    xPerKm: (2.188 * beta * f13) / (a13 * a13),
    perMetre: (0.009575 * beta * beta * f13 * f13) / a13,
    leastDb: 2 + 20 * Math.log10(k),
  };
}

/** Terms in threes, in the order of their names above, for so many entries. */
export function residueTable(termsOf: (index: number) => ResidueTerms, entries: number): Float64Array {
  const table = new Float64Array(3 * entries);
  for (let index = 0; index < entries; index++) {
    const { xPerKm, perMetre, leastDb } = termsOf(index);
    table.set([xPerKm, perMetre, leastDb], 3 * index);
  }
  return table;
}
