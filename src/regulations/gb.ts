/** The United Kingdom: the amateur licence of 2024, PMR446, business radio "Simple UK Light" and both citizens' bands. */
import { ceptCbChannels, ceptCbPower, ceptCbService } from './cept/cb.ts';
import { pmr446Channels, pmr446Service } from './cept/pmr446.ts';
import { ceptSources } from './cept/sources.ts';
import type { Country } from './country.ts';
import { distressFrequencies, distressSources } from './distress-frequencies.ts';
import {
  amateurAllocations,
  amateurAreas,
  amateurBandPlan,
  amateurOffsets,
  amateurPower,
  amateurService,
} from './gb/amateur.ts';
import { simpleUkLightChannels, simpleUkLightService } from './gb/simple-uk-light.ts';
import { sources } from './gb/sources.ts';
import { ukCbChannels, ukCbPower } from './gb/uk-cb.ts';
import { region1BandPlan, region1Emergency } from './iaru-region-1/band-plan.ts';
import { region1Channels, region1Channels70cmUk } from './iaru-region-1/channels.ts';
import { region1Offsets, region1Rasters } from './iaru-region-1/offsets.ts';
import { region1Sources } from './iaru-region-1/sources.ts';

export const unitedKingdom: Country = {
  code: 'gb',
  name: 'United Kingdom',
  asOf: '2024-02-21',
  caution:
    'Rules of the United Kingdom after 21 February 2024, powers by band from an unofficial guide: read your licence schedule. Not legal advice.',
  exposure: 'icnirp',
  mainsHz: 50,
  sources: { ...ceptSources, ...distressSources, ...region1Sources, ...sources },
  services: [amateurService, pmr446Service, ceptCbService, simpleUkLightService],
  allocations: amateurAllocations,
  emissions: [],
  widths: [],
  powers: [...amateurPower, ...ceptCbPower, ...ukCbPower],
  barredStations: [],
  bandPlan: [...amateurBandPlan, ...region1BandPlan, ...region1Emergency],
  offsets: [...amateurOffsets, ...region1Offsets],
  channels: [
    ...pmr446Channels,
    ...ceptCbChannels,
    ...ukCbChannels,
    ...simpleUkLightChannels,
    ...region1Channels,
    ...region1Channels70cmUk,
  ],
  designators: 'iaru-region-1',
  listenOnly: distressFrequencies,
  areas: amateurAreas,
  rasters: region1Rasters,
};
