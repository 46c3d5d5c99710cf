import type { OffsetRow, RasterRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Shifts as the user's set sees them, transmit minus receive. The plans print most of them without a sign, or
 * with signs that mean different things, so every sign here is worked out from the two frequencies.
 */
const shift = (
  band: string,
  from: string,
  to: string,
  usual: readonly string[],
  source: string,
  note?: string,
): OffsetRow => ({
  service: 'amateur',
  band,
  fromHz: mhz(from),
  toHz: mhz(to),
  usualHz: usual.map(mhz),
  alsoHz: [],
  source,
  ...(note && { note }),
});

/** Outputs that stand in the same place in every Region 1 country. */
export const region1Offsets: readonly OffsetRow[] = [
  shift('6 m', '50.710', '50.890', ['0.5'], 'iaru-r1-vhf'),
  shift('6 m', '51.810', '51.990', ['-0.6'], 'iaru-r1-vhf'),
  shift('2 m', '145.575', '145.7935', ['-0.6'], 'iaru-r1-vhf'),
  shift('23 cm', '1242.025', '1242.700', ['28'], 'iaru-r1-uhf'),
  shift('23 cm', '1258.150', '1259.350', ['35'], 'iaru-r1-uhf'),
  shift('23 cm', '1297.000', '1297.475', ['-6'], 'iaru-r1-uhf'),
];

export const region1Offsets70cm: readonly OffsetRow[] = [
  shift('70 cm', '430.025', '430.375', ['1.6'], 'iaru-r1-uhf', 'France, Netherlands, Belgium'),
  shift('70 cm', '434.600', '434.9875', ['-1.6', '-2'], 'iaru-r1-uhf', '2 MHz in the Nordic countries'),
  shift('70 cm', '438.650', '439.425', ['-7.6'], 'iaru-r1-uhf', 'Switzerland, Germany, Austria'),
];

const raster = (from: string, to: string, stepHz: number, source: string): RasterRow => ({
  fromHz: mhz(from),
  toHz: mhz(to),
  stepsHz: [stepHz],
  source,
});

export const region1Rasters: readonly RasterRow[] = [
  raster('51.210', '51.990', 10_000, 'iaru-r1-channels'),
  raster('144.975', '145.1875', 12_500, 'iaru-r1-channels'),
  raster('145.2125', '145.7875', 12_500, 'iaru-r1-channels'),
  raster('433.000', '433.575', 12_500, 'iaru-r1-channels'),
  raster('434.600', '434.975', 12_500, 'iaru-r1-channels'),
];
