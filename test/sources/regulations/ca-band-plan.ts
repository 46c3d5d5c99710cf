/*
 * Publisher: Radio Amateurs of Canada.
 * Document: 2 m band plan, edition of September 1995, read in a copy.
 * Columns: wavelength band, from MHz, to MHz, kind of use.
 */

export const canadaTable: readonly (readonly [band: string, from: string, to: string, use: string])[] = [
  ['2 m', '144.000', '144.100', 'weak-signal'],
  ['2 m', '144.100', '144.275', 'weak-signal'],
  ['2 m', '144.275', '144.300', 'beacon'],
  ['2 m', '144.300', '144.500', 'satellite'],
  ['2 m', '144.500', '144.900', 'repeater-input'],
  ['2 m', '144.900', '145.100', 'digital'],
  ['2 m', '145.100', '145.500', 'repeater-output'],
  ['2 m', '145.500', '145.590', 'satellite'],
  ['2 m', '145.590', '145.790', 'digital'],
  ['2 m', '145.800', '146.000', 'satellite'],
  ['2 m', '146.010', '146.370', 'repeater-input'],
  ['2 m', '146.400', '146.580', 'simplex'],
  ['2 m', '146.610', '147.390', 'repeater-output'],
  ['2 m', '147.420', '147.570', 'simplex'],
  ['2 m', '147.600', '147.990', 'repeater-input'],
];
