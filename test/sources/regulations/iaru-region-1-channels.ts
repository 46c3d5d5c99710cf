/*
 * Publisher: International Amateur Radio Union, Region 1.
 * Document: VHF Handbook, FM channel designation system (Tel Aviv 1996), in two translations that agree.
 * Columns: designator, MHz (of the output where it begins with R).
 */

export const designatorTable: readonly (readonly [designator: string, mhz: string])[] = [
  ['F51', '51.510'],
  ['RF79', '51.790'],
  ['V40', '145.500'],
  ['RV48', '145.600'],
  ['RV60', '145.750'],
  ['U280', '433.500'],
  ['RU002', '430.025'],
  ['RU242', '433.025'],
  ['RU368', '434.600'],
  ['RU692', '438.650'],
  ['RU716', '438.950'],
  ['U642', '438.025'],
];
