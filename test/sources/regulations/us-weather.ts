/*
 * Publisher: National Weather Service, United States (frequencies); names in the order of frequency as in the
 * National Interoperability Field Operations Guide 2.02, page 37.
 * Columns: name, MHz.
 */

export const weatherTable: readonly (readonly [name: string, mhz: string])[] = [
  ['WX1', '162.400'],
  ['WX2', '162.425'],
  ['WX3', '162.450'],
  ['WX4', '162.475'],
  ['WX5', '162.500'],
  ['WX6', '162.525'],
  ['WX7', '162.550'],
];
