/*
 * Publisher: International Amateur Radio Union, Region 1.
 * Document: VHF Handbook, FM channel designation system (Tel Aviv 1996), in two translations that agree.
 * Columns: designator, MHz (of the output where it begins with R), name before 1996 where the table gives one.
 */

export const designatorTable: readonly (readonly [designator: string, mhz: string, former?: string])[] = [
  ['F51', '51.510'],
  ['RF79', '51.790'],
  ['V40', '145.500', 'S20'],
  ['RV48', '145.600', 'R0'],
  ['RV60', '145.750', 'R6'],
  ['U280', '433.500', 'SU20'],
  ['RU002', '430.025', 'FRU1'],
  ['RU242', '433.025', 'RB1'],
  ['RU368', '434.600', 'RU0'],
  ['RU692', '438.650', 'R70'],
  ['RU716', '438.950', 'R82'],
  ['U642', '438.025'],
];
