/** Canada: RBR-4 Issue 3 (July 2022), the national band plans of 1995, licence-exempt family radio and the General Radio Service. */
import {
  amateurAllocations,
  amateurBandPlan,
  amateurBarredStations,
  amateurOffsets,
  amateurPower,
  amateurRasters,
  amateurService,
  amateurWidths,
} from './ca/amateur.ts';
import { frsChannels, frsPower, frsService } from './ca/frs.ts';
import { sources } from './ca/sources.ts';
import { cbFrequencies } from './cb-frequencies.ts';
import type { ChannelRow, Country, PowerRow, ServiceRow } from './country.ts';
import { distressFrequencies, distressSources } from './distress-frequencies.ts';
import { region2Emergency, region2Sources } from './iaru-region-2/emergency.ts';
import { mhz } from './mhz.ts';

const generalRadio: ServiceRow = {
  id: 'cb',
  name: 'General Radio Service (citizens’ band)',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'no licence; a set certified for the General Radio Service',
  source: 'ric-18',
};

const cbChannels = cbFrequencies.map(
  ([n, at]): ChannelRow => ({
    service: 'cb',
    name: `CB ${n}`,
    receiveHz: mhz(at),
    transmitHz: mhz(at),
    maxWidthHz: 8_000,
    kinds: ['phone'],
    modulations: ['am', 'ssb'],
    note: 'The width is from memory.',
    source: 'ric-18',
  }),
);
const cb = {
  service: 'cb',
  fromHz: mhz('26.965'),
  toHz: mhz('27.405'),
  measure: 'output',
  source: 'ric-18-power',
} as const;
const cbPower: readonly PowerRow[] = [
  { ...cb, maxW: 4, modulations: ['am'], fromMemory: true },
  { ...cb, maxW: 12, modulations: ['ssb'], fromMemory: true },
];

export const canada: Country = {
  code: 'ca',
  name: 'Canada',
  asOf: '2022-07-01',
  caution:
    'Rules of Canada as quoted from RBR-4 Issue 3, with band plans of 1995 and family-radio powers from memory. Not legal advice.',
  // Canada limits exposure by Safety Code 6, whose figures lie near the international guideline.
  exposure: 'icnirp',
  mainsHz: 60,
  sources: {
    ...sources,
    ...distressSources,
    ...region2Sources,
  },
  services: [amateurService, frsService, generalRadio],
  allocations: amateurAllocations,
  emissions: [],
  widths: amateurWidths,
  powers: [...amateurPower, ...frsPower, ...cbPower],
  barredStations: amateurBarredStations,
  bandPlan: [...amateurBandPlan, ...region2Emergency],
  offsets: amateurOffsets,
  channels: [...frsChannels, ...cbChannels],
  listenOnly: distressFrequencies,
  areas: [],
  rasters: amateurRasters,
};
