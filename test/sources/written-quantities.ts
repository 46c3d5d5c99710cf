/**
 * Pairs of a written quantity and its value in the base unit.
 *
 * International foot and mile: exact, 0.3048 m and 1609.344 m (NIST Special Publication 811, 2008 edition,
 * appendix B.8). 2.15 dB between a half-wave dipole and an isotropic antenna: ITU Radio Regulations, edition
 * of 2020, Nos. 1.161 and 1.162 (definitions), the figure from memory. Levels across 50 ohms: P = U²/R, worked
 * by hand to 0.1 dB. SI prefixes: the SI brochure, 9th edition, table 7.
 */
export const writtenQuantities = [
  // dimension, as written, value in the base unit, tolerance
  ['frequency', '146.940', 146_940_000, 0],
  ['frequency', '146.94', 146_940_000, 0],
  ['frequency', '446.00625', 446_006_250, 0],
  ['frequency', '446.006250 MHz', 446_006_250, 0],
  ['frequency', '162550 kHz', 162_550_000, 0],
  ['frequency', '1.2961 GHz', 1_296_100_000, 0],
  ['frequency', '7100000Hz', 7_100_000, 0],
  ['frequencyOffset', '-0.6', -600_000, 0],
  ['frequencyOffset', '-0.6 MHz', -600_000, 0],
  ['frequencyOffset', '−0.6 MHz', -600_000, 0],
  ['frequencyOffset', '600 kHz', 600_000, 0],
  ['frequencyOffset', '+5', 5_000_000, 0],
  ['frequencyOffset', '0', 0, 0],
  ['spacing', '12.5', 12_500, 0],
  ['spacing', '8.33333', undefined, 0],
  ['spacing', '6.25 kHz', 6_250, 0],
  ['power', '5', 5, 0],
  ['power', '500 mW', 0.5, 0],
  ['power', '1.5 kW', 1500, 0],
  ['length', '612 m', 612, 0],
  ['length', '2000 ft', 609.6, 0],
  ['length', '1 mi', 1609.344, 0],
  ['length', '1.2 km', 1200, 0],
  ['duration', '15', 900, 0],
  ['duration', '90 s', 90, 0],
  ['duration', '12 h', 43_200, 0],
  ['duration', '2 d', 172_800, 0],
  ['duration', '300 ms', 0.3, 0],
  ['gain', '2.15 dBi', 2.15, 0],
  ['gain', '-5 dBd', -2.85, 0],
  ['gain', '0 dBd', 2.15, 0],
  ['level', '-119 dBm', -119, 0],
  ['level', '0.25 uV', -119, 0.1],
  ['level', '0.35 µV', -116.1, 0.1],
  ['level', '1 µV', -107, 0.1],
  ['energy', '14.8 Wh', 14.8, 0],
  ['energy', '14800 mWh', 14.8, 0],
  ['current', '60 mA', 0.06, 0],
  ['current', '1.5 A', 1.5, 0],
  ['voltage', '7.4', 7.4, 0],
  ['loss', '1.5 dB', 1.5, 0],
  ['ratio', '50 %', 0.5, 0],
] as const;
