import type { Source } from '../../findings/finding.ts';
import type { BandPlanRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* Emergency centres of activity on HF in the Americas. The plan itself was read in notices of the Chilean society. */
export const region2Sources = {
  'iaru-r2-emergency': {
    document: 'IARU Region 2 band plan, emergency centres of activity (as quoted)',
    date: '2016-10-14',
  },
} as const satisfies Readonly<Record<string, Source>>;

const centre = (band: string, at: string): BandPlanRow => ({
  band,
  fromHz: mhz(at),
  toHz: mhz(at),
  use: 'emergency',
  label: 'emergency centre of activity',
  source: 'iaru-r2-emergency',
});

export const region2Emergency: readonly BandPlanRow[] = [
  centre('80 m', '3.750'),
  centre('75 m', '3.985'),
  centre('40 m', '7.060'),
  centre('40 m', '7.240'),
  centre('40 m', '7.275'),
  centre('20 m', '14.300'),
  centre('17 m', '18.160'),
  centre('15 m', '21.360'),
];
