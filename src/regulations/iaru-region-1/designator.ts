import { mhz } from '../mhz.ts';

/*
 * IARU Region 1 VHF Handbook, FM channel designators (Tel Aviv 1996): start, step and number of digits by letter.
 */
const rasters: Readonly<Record<string, readonly [startHz: number, stepHz: number, digits: number]>> = {
  F: [mhz('51'), 10_000, 2],
  V: [mhz('145'), 12_500, 2],
  U: [mhz('430'), 12_500, 3],
};

/**
 * The frequency an IARU Region 1 channel designator stands for: `V40` is 145.500 MHz, `RV48` (a repeater,
 * numbered by its output) 145.600 MHz. Undefined for anything that is no designator.
 */
export function region1DesignatorHz(designator: string): number | undefined {
  const [, letter = '', number = ''] = /^R?([FVU])(\d+)$/.exec(designator) ?? [];
  const raster = rasters[letter];
  if (raster?.[2] !== number.length) return undefined;
  return raster[0] + Number(number) * raster[1];
}
