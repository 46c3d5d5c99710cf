import type { Source } from '../../findings/finding.ts';
import type { BandPlanRow } from '../country.ts';
import { mhz } from '../mhz.ts';

export const region3Sources: Readonly<Record<string, Source>> = {
  'iaru-r3-emergency': {
    document: 'IARU Region 3, HF emergency centres of activity',
    fromMemory: true,
  },
};

const centre = (band: string, at: string): BandPlanRow => ({
  band,
  fromHz: mhz(at),
  toHz: mhz(at),
  use: 'emergency',
  label: 'emergency centre of activity',
  fromMemory: true,
  source: 'iaru-r3-emergency',
});

/** Where traffic of an emergency gathers on HF in Asia and the Pacific. */
export const region3Emergency: readonly BandPlanRow[] = [
  centre('80 m', '3.600'),
  centre('40 m', '7.110'),
  centre('20 m', '14.300'),
  centre('17 m', '18.160'),
  centre('15 m', '21.360'),
];
