/**
 * Necessary bandwidth in four characters, hertz: examples of ITU Radio Regulations, Appendix 1, section I
 * (the same in 47 CFR 2.202(b)).
 */
export const bandwidthExamples = [
  [0.002, 'H002'],
  [0.1, 'H100'],
  [25.3, '25H3'],
  [400, '400H'],
  [2400, '2K40'],
  [6000, '6K00'],
  [12_500, '12K5'],
  [180_400, '180K'],
  [180_500, '181K'],
  [180_700, '181K'],
  [1_250_000, '1M25'],
  [2_000_000, '2M00'],
  [10_000_000, '10M0'],
  [202_000_000, '202M'],
  [5_650_000_000, '5G65'],
] as const;

/**
 * FM telephony: highest modulating frequency, peak deviation, width (hertz), designator. First row:
 * Recommendation ITU-R SM.1138, worked example; last: ITU Radio Regulations of 1947, Appendix 5, for 36 kHz;
 * the others from the same formula.
 */
export const telephonyExamples = [
  [3000, 5000, 16_000, '16K0F3E'],
  [3000, 4000, 14_000, '14K0F3E'],
  [3000, 2500, 11_000, '11K0F3E'],
  [3000, 15_000, 36_000, '36K0F3E'],
] as const;
