/** Powers and gains in decibels. */

/** A half-wave dipole over an isotropic antenna, dB. */
export const dipoleGainDbi = 2.15;

export function dbmOfWatts(powerW: number): number {
  return 10 * Math.log10(powerW * 1000);
}

/** Voltage across 50 ohm at a receiver's socket, microvolts, as dBm. */
export function dbmOfMicrovolts(microvolts: number): number {
  return 10 * Math.log10(((microvolts * 1e-6) ** 2 / 50) * 1000);
}

/** Decibels to a ratio of powers. */
export function ratioOfDb(db: number): number {
  return 10 ** (db / 10);
}

export function dbOfRatio(ratio: number): number {
  return 10 * Math.log10(ratio);
}
