import type { OffsetRow, RasterRow } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * Usual repeater shifts by where the output lies, and the rasters channels stand on. The shifts of 6 m, 1.25 m,
 * 33 cm and 23 cm follow from the plan's blocks by subtraction. Which states use which raster on 2 m, and
 * which sign on 70 cm, the local coordinator says: a group can name its own in a local rules file.
 */
const shift = (
  band: string,
  from: string,
  to: string,
  usualHz: readonly number[],
  alsoHz: readonly number[],
  source: UsSource,
  extra: Partial<OffsetRow> = {},
): OffsetRow => ({
  service: 'amateur',
  band,
  fromHz: mhz(from),
  toHz: mhz(to),
  usualHz,
  alsoHz,
  source,
  ...extra,
});

const k600 = 600_000;
const M1 = 1_000_000;

export const amateurOffsets: readonly OffsetRow[] = [
  shift('10 m', '29.610', '29.700', [-100_000], [], 'arrl-plan', { fromMemory: true }),
  shift('6 m', '51.62', '53.98', [-500_000], [-M1, -1_700_000], 'arrl-plan', {
    note: '1 MHz in Texas; 1.7 MHz elsewhere from memory.',
  }),
  shift('2 m', '145.10', '145.50', [-k600], [], 'ncvec-shifts'),
  shift('2 m', '146.40', '146.50', [M1], [], 'coordinator-shifts', {
    note: 'Proposed pairs of a New England coordinator, inputs 147.41-147.49.',
  }),
  shift('2 m', '146.61', '146.985', [-k600], [-M1, M1], 'ncvec-shifts'),
  shift('2 m', '147.000', '147.000', [k600, -k600], [-M1, M1], 'coordinator-shifts'),
  shift('2 m', '147.000', '147.060', [k600], [-k600, -M1, M1], 'coordinator-shifts'),
  shift('2 m', '147.000', '147.395', [k600], [-M1, M1], 'ncvec-shifts'),
  shift('1.25 m', '223.71', '224.98', [-1_600_000], [], 'arrl-plan'),
  shift('70 cm', '440', '450', [5 * M1, -5 * M1], [], 'ncvec-shifts'),
  shift('33 cm', '919', '922', [-12 * M1], [], 'arrl-plan-33cm', { note: 'Older plan, still met.' }),
  shift('33 cm', '927', '928', [-25 * M1], [], 'arrl-plan-33cm'),
  shift('23 cm', '1282', '1288', [-12 * M1], [-20 * M1], 'rac-23cm'),
  shift('23 cm', '1290', '1294', [-20 * M1], [], 'rac-23cm', { fromMemory: true }),
];

const raster = (
  from: string,
  to: string,
  stepsHz: readonly number[],
  source: UsSource,
  extra: Partial<RasterRow> = {},
): RasterRow => ({ fromHz: mhz(from), toHz: mhz(to), stepsHz, source, ...extra });

export const amateurRasters: readonly RasterRow[] = [
  raster('29.520', '29.680', [20_000], 'arrl-plan', { fromMemory: true }),
  raster('145.110', '145.490', [20_000], 'coordinator-20khz'),
  raster('146.010', '146.400', [15_000], 'coordinator-15khz'),
  raster('146.400', '146.580', [15_000, 20_000], 'coordinator-15khz'),
  raster('146.610', '147.390', [15_000], 'coordinator-15khz'),
  raster('146.620', '147.380', [20_000], 'coordinator-20khz'),
  raster('147.420', '147.570', [15_000], 'coordinator-15khz'),
  raster('147.420', '147.580', [20_000], 'coordinator-20khz'),
  raster('223.860', '224.980', [20_000], 'arrl-plan', { fromMemory: true }),
  raster('927.000', '928.000', [12_500], 'arrl-plan-33cm'),
  raster('1270', '1276', [25_000], 'rac-23cm'),
  raster('1282', '1288', [25_000], 'rac-23cm'),
];
