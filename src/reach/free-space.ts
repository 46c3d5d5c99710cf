/** Basic transmission loss between isotropic antennas in free space. Source: Recommendation ITU-R P.525. */

/** Metres per second. */
export const speedOfLight = 299_792_458;

export function wavelengthM(frequencyHz: number): number {
  return speedOfLight / frequencyHz;
}

/** `20 log(4 pi d / lambda)`, dB. The usual form with the constant 32.4 reads 0.048 dB less. */
export function freeSpaceLossDb(frequencyHz: number, distanceM: number): number {
  return 20 * Math.log10((4 * Math.PI * distanceM) / wavelengthM(frequencyHz));
}
