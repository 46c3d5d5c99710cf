/**
 * The power below which a station in the United States needs no evaluation of its exposure. Source: 47 CFR 1.1307(b)(3)(i)(A) and (C), table 1.
 */
import { nearFieldM } from './exposure.ts';

/** W of ERP at a frequency in MHz and a distance in m. */
const thresholds = [
  { fromMhz: 0.3, toMhz: 1.34, erpW: (_mhz: number, m: number) => 1920 * m ** 2 },
  { fromMhz: 1.34, toMhz: 30, erpW: (mhz: number, m: number) => (3450 * m ** 2) / mhz ** 2 },
  { fromMhz: 30, toMhz: 300, erpW: (_mhz: number, m: number) => 3.83 * m ** 2 },
  { fromMhz: 300, toMhz: 1500, erpW: (mhz: number, m: number) => 0.0128 * m ** 2 * mhz },
  { fromMhz: 1500, toMhz: 100_000, erpW: (_mhz: number, m: number) => 19.2 * m ** 2 },
] as const;

/**
 * Greatest ERP (over a half-wave dipole), W, that is exempt with nobody nearer than `distanceM`. `undefined` where the table does not hold: outside its
 * frequencies, and nearer than the wavelength over 2 pi.
 */
export function exemptErpW(frequencyHz: number, distanceM: number): number | undefined {
  if (distanceM < nearFieldM(frequencyHz)) return undefined;
  const mhz = frequencyHz / 1e6;
  const row = thresholds.find(({ fromMhz, toMhz }) => mhz >= fromMhz && mhz <= toMhz);
  return row?.erpW(mhz, distanceM);
}
