/**
 * Loss of the line between radio and antenna.
 *
 * Sources: cable appendix of a training guide for builders of repeater systems (RG-58, RG-213, RG-8 foam; connectors), and the cable
 * page of a county volunteer radio group (the others); dB per 100 m at 150 and 450 MHz. Makers differ by a tenth; old
 * or wet cable loses more.
 */

/** dB per 100 m at 150 and at 450 MHz; the names are what the lines are. */
const lines = {
  'rg-58': { name: 'RG-58, 5 mm', at150: 20.0, at450: 35.5 },
  'rg-8x': { name: 'RG-8X, 6 mm foam', at150: 15.4, at450: 28.2 },
  'rg-213': { name: 'RG-213, 10 mm', at150: 8.9, at450: 16.3 },
  'rg-8-foam': { name: 'RG-8 type, 10 mm foam', at150: 7.2, at450: 13.0 },
  'low-loss-6mm': { name: '6 mm low-loss foam, foil and braid', at150: 9.8, at450: 17.4 },
  'low-loss-10mm': { name: '10 mm low-loss foam, foil and braid', at150: 4.9, at450: 8.9 },
  'low-loss-15mm': { name: '15 mm low-loss foam', at150: 3.3, at450: 5.6 },
} as const;

export type FeedLine = keyof typeof lines;

/** In the order of the table, thinnest first. */
export const feedLines = [
  'rg-58',
  'rg-8x',
  'rg-213',
  'rg-8-foam',
  'low-loss-6mm',
  'low-loss-10mm',
  'low-loss-15mm',
] as const satisfies readonly FeedLine[];

/** Twice the loss at three times the frequency: 0.25 dB a connector at 150 MHz, 0.5 dB at 450 MHz (same training guide). */
const connectorExponent = Math.log(2) / Math.log(3);

/**
 * Loss of a length of line with its connectors, dB. Between and beyond the two published frequencies by `p sqrt(f) + q f`: the
 * resistance of the skin and the loss in the insulation.
 */
export function feedLineLossDb(line: FeedLine, lengthM: number, frequencyHz: number, connectors = 2): number {
  const { at150, at450 } = lines[line];
  const f = frequencyHz / 150e6;
  // Solved for f in units of 150 MHz: p + q = at150, p sqrt(3) + 3 q = at450.
  const q = (at450 - Math.sqrt(3) * at150) / (3 - Math.sqrt(3));
  const p = at150 - q;
  return (lengthM / 100) * (p * Math.sqrt(f) + q * f) + connectors * 0.25 * f ** connectorExponent;
}
