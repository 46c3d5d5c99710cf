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

/*
 * Names of before the system of 1996, all 25 kHz apart. The handbook's table gives one or two of each series;
 * that the rest follow, and how far, is from memory. A name is a repeater's where it is one of its output.
 */
const former: readonly {
  readonly letters: string;
  readonly first: number;
  readonly last: number;
  readonly firstHz: number;
  readonly repeater: boolean;
}[] = [
  { letters: 'S', first: 8, last: 23, firstHz: mhz('145.200'), repeater: false },
  { letters: 'SU', first: 16, last: 23, firstHz: mhz('433.400'), repeater: false },
  { letters: 'R', first: 0, last: 7, firstHz: mhz('145.600'), repeater: true },
  { letters: 'FRU', first: 1, last: 15, firstHz: mhz('430.025'), repeater: true },
  { letters: 'RB', first: 0, last: 15, firstHz: mhz('433.000'), repeater: true },
  { letters: 'RU', first: 0, last: 15, firstHz: mhz('434.600'), repeater: true },
  { letters: 'R', first: 70, last: 101, firstHz: mhz('438.650'), repeater: true },
];
const formerStepHz = 25_000;

/** The former name of a channel, if it had one: 145.500 MHz was `S20`, the repeater on 145.600 MHz `R0`. */
export function region1FormerName(frequencyHz: number, repeater: boolean): string | undefined {
  for (const series of former) {
    const k = (frequencyHz - series.firstHz) / formerStepHz;
    if (series.repeater !== repeater || !Number.isInteger(k) || k < 0 || k > series.last - series.first)
      continue;
    return `${series.letters}${series.first + k}`;
  }
  return undefined;
}

/** The frequency of a former name, undefined for anything that is none. */
export function region1FormerHz(name: string): number | undefined {
  const [, letters = '', digits = ''] = /^([A-Z]+)(0|[1-9]\d*)$/.exec(name) ?? [];
  const n = Number(digits);
  const series = former.find((row) => row.letters === letters && row.first <= n && n <= row.last);
  return series && digits !== '' ? series.firstHz + (n - series.first) * formerStepHz : undefined;
}
