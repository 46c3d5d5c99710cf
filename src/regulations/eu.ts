/** The CEPT countries: PMR446, the citizens' band and the IARU Region 1 plans. Each country's own licence terms come first. */
import { ceptCbChannels, ceptCbPower, ceptCbService } from './cept/cb.ts';
import { pmr446Channels, pmr446Service } from './cept/pmr446.ts';
import { ceptSources } from './cept/sources.ts';
import type { AllocationRow, Country, ServiceRow } from './country.ts';
import { distressFrequencies, distressSources } from './distress-frequencies.ts';
import { region1BandPlan, region1Emergency, region1Repeaters70cm } from './iaru-region-1/band-plan.ts';
import { region1Channels, region1Channels70cm } from './iaru-region-1/channels.ts';
import { norwegianEmergency } from './iaru-region-1/norwegian-emergency.ts';
import { region1Offsets, region1Offsets70cm, region1Rasters } from './iaru-region-1/offsets.ts';
import { region1Sources } from './iaru-region-1/sources.ts';
import { mhz } from './mhz.ts';

const amateur: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Service',
  licence: 'personal',
  classes: [
    { id: 'novice', name: 'CEPT Novice' },
    { id: 'cept', name: 'CEPT' },
  ],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold: 'an amateur licence; abroad, one under CEPT T/R 61-01 or ECC Recommendation (05)06',
  identification: {
    atStart: true,
    atEnd: true,
    how: 'Give your call sign at short intervals, and as your own licence says.',
    source: 'itu-25',
  },
  fromMemory: true,
  source: 'cept-licence',
};

const national = 'The terms of the national licence come first and may give less.';
const band = (name: string, from: string, to: string, source: string): AllocationRow => ({
  service: 'amateur',
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  note: national,
  source,
});
const remembered = (name: string, from: string, to: string): AllocationRow => ({
  ...band(name, from, to, 'itu-5'),
  fromMemory: true,
});

export const europe: Country = {
  code: 'eu',
  name: 'Europe (CEPT)',
  asOf: '2021-03-18',
  caution:
    'What the CEPT countries have in common, read in quotations of the decisions and plans; each country’s own terms come first. Not legal advice.',
  exposure: 'icnirp',
  mainsHz: 50,
  sources: {
    ...ceptSources,
    ...distressSources,
    ...region1Sources,
    'cept-licence': {
      document: 'CEPT Recommendation T/R 61-01; ECC Recommendation (05)06',
      fromMemory: true,
    },
    'norway-emergency': {
      document:
        'Emergency frequencies of Norway, as a club of the national society lists them, without a date',
    },
    'itu-5': { document: 'ITU Radio Regulations', section: 'Article 5, Region 1', fromMemory: true },
    'itu-25': { document: 'ITU Radio Regulations', section: 'Article 25, No. 25.9', date: '2003-07-04' },
  },
  services: [amateur, pmr446Service, ceptCbService],
  allocations: [
    remembered('160 m', '1.810', '2.000'),
    remembered('80 m', '3.500', '3.800'),
    remembered('60 m', '5.3515', '5.3665'),
    remembered('40 m', '7.000', '7.200'),
    remembered('30 m', '10.100', '10.150'),
    remembered('20 m', '14.000', '14.350'),
    remembered('17 m', '18.068', '18.168'),
    remembered('15 m', '21.000', '21.450'),
    remembered('12 m', '24.890', '24.990'),
    remembered('10 m', '28.000', '29.700'),
    band('6 m', '50.000', '54.000', 'iaru-r1-vhf'),
    band('4 m', '70.000', '70.500', 'iaru-r1-vhf'),
    band('2 m', '144.000', '146.000', 'iaru-r1-vhf'),
    band('70 cm', '430.000', '440.000', 'iaru-r1-uhf'),
    band('23 cm', '1240.000', '1300.000', 'iaru-r1-uhf'),
  ],
  emissions: [],
  widths: [],
  powers: ceptCbPower,
  barredStations: [],
  bandPlan: [...region1BandPlan, ...region1Repeaters70cm, ...region1Emergency],
  offsets: [...region1Offsets, ...region1Offsets70cm],
  channels: [
    ...pmr446Channels,
    ...ceptCbChannels,
    ...region1Channels,
    ...region1Channels70cm,
    ...norwegianEmergency,
  ],
  designators: 'iaru-region-1',
  listenOnly: distressFrequencies,
  areas: [],
  rasters: region1Rasters,
};
