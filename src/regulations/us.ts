/** The United States: 47 CFR parts 95 and 97 as of mid 2026, the national society's band plan, the federal field guide. */
import type { Country } from './country.ts';
import { region2Emergency, region2Sources } from './iaru-region-2/emergency.ts';
import { amateurService } from './us/amateur.ts';
import { amateurAllocations } from './us/amateur-allocations.ts';
import { amateurBandPlan } from './us/amateur-band-plan.ts';
import { amateurBarredStations } from './us/amateur-barred-stations.ts';
import { amateurEmissions, amateurWidths } from './us/amateur-emissions.ts';
import { amateurOffsets, amateurRasters } from './us/amateur-offsets.ts';
import { amateurPower } from './us/amateur-power.ts';
import { areas } from './us/areas.ts';
import { cbChannels, cbPower, cbService, cbWidths } from './us/cb.ts';
import { frsChannels, frsService } from './us/frs.ts';
import { gmrsChannels, gmrsOffsets, gmrsPower, gmrsService } from './us/gmrs.ts';
import { interoperabilityChannels, interoperabilityService } from './us/interoperability.ts';
import { listenOnly } from './us/listen-only.ts';
import { mursChannels, mursService } from './us/murs.ts';
import { sources } from './us/sources.ts';
import { weatherChannels, weatherService } from './us/weather.ts';

export const unitedStates: Country = {
  code: 'us',
  name: 'United States',
  asOf: '2026-07-28',
  caution:
    'Rules of the United States as read in mid 2026, amateur bands from 160 m to 23 cm; not legal advice, and no substitute for 47 CFR.',
  exposure: 'fcc',
  mainsHz: 60,
  sources: { ...sources, ...region2Sources },
  services: [
    amateurService,
    gmrsService,
    frsService,
    mursService,
    cbService,
    weatherService,
    interoperabilityService,
  ],
  allocations: amateurAllocations,
  emissions: amateurEmissions,
  widths: [...amateurWidths, ...cbWidths],
  powers: [...amateurPower, ...gmrsPower, ...cbPower],
  barredStations: amateurBarredStations,
  bandPlan: [...amateurBandPlan, ...region2Emergency],
  offsets: [...amateurOffsets, ...gmrsOffsets],
  channels: [
    ...gmrsChannels,
    ...frsChannels,
    ...mursChannels,
    ...cbChannels,
    ...weatherChannels,
    ...interoperabilityChannels,
  ],
  listenOnly,
  areas,
  rasters: amateurRasters,
};
