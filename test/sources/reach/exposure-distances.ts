/**
 * Distances and densities for exposure to radio-frequency fields, as published. MHz, W, dBi, reflection factor.
 *
 * First four: FCC OET Bulletin 65, Supplement B (97-01), moonbounce table (eight 17-element antennas), feet, cut and not rounded; read from a
 * page image, the title of the table from memory. Next: a technical report of 2026 on a 5 W hand-portable station, metres to 0.01. Last:
 * Supplement B, VHF table, metres to 0.1, from memory.
 */
export const publishedDistances = [
  { mhz: 144, powerW: 500, gainDbi: 24, reflection: 'usual', occupationalM: 166 * 0.3048, withinM: 0.3048 },
  {
    mhz: 144,
    powerW: 1500,
    gainDbi: 24,
    reflection: 'usual',
    occupationalM: 287 * 0.3048,
    publicM: 642 * 0.3048,
    withinM: 0.3048,
  },
  { mhz: 144, powerW: 150, gainDbi: 24, reflection: 'usual', occupationalM: 90 * 0.3048, withinM: 0.3048 },
  {
    mhz: 144,
    powerW: 5,
    gainDbi: 2.15,
    reflection: 'usual',
    occupationalM: 0.41,
    publicM: 0.91,
    withinM: 0.006,
  },
  {
    mhz: 144,
    powerW: 5,
    gainDbi: 2.15,
    reflection: 'none',
    occupationalM: 0.26,
    publicM: 0.57,
    withinM: 0.006,
  },
  {
    mhz: 144,
    powerW: 2,
    gainDbi: 2.15,
    reflection: 'usual',
    occupationalM: 0.26,
    publicM: 0.58,
    withinM: 0.006,
  },
  {
    mhz: 144,
    powerW: 1,
    gainDbi: 2.15,
    reflection: 'usual',
    occupationalM: 0.18,
    publicM: 0.41,
    withinM: 0.006,
  },
  { mhz: 144, powerW: 50, gainDbi: 0, reflection: 'usual', occupationalM: 1.0, publicM: 2.3, withinM: 0.051 },
  {
    mhz: 144,
    powerW: 100,
    gainDbi: 0,
    reflection: 'usual',
    occupationalM: 1.4,
    publicM: 3.2,
    withinM: 0.051,
  },
  {
    mhz: 144,
    powerW: 500,
    gainDbi: 0,
    reflection: 'usual',
    occupationalM: 3.2,
    publicM: 7.1,
    withinM: 0.051,
  },
  {
    mhz: 144,
    powerW: 1000,
    gainDbi: 0,
    reflection: 'usual',
    occupationalM: 4.5,
    publicM: 10.1,
    withinM: 0.051,
  },
] as const;

/** Densities at 20 cm without reflection, mW/cm²: three equipment filings with the FCC that cite Bulletin 65, page 18. */
export const publishedDensities = [
  { mhz: 2405, powerW: 0.108893, gainDbi: 2, mwCm2: 0.034334 },
  { mhz: 2400, powerW: 0.039811, gainDbi: 0, mwCm2: 0.00792 },
  { mhz: 824, powerW: 0.408263, gainDbi: 3, mwCm2: 0.162058 },
] as const;
