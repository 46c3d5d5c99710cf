/** Australia: the UHF and 27 MHz citizens' bands under the class licence, and the amateur bands, these mostly from memory. */
import { uhfCbChannels, uhfCbOffsets, uhfCbPower, uhfCbService } from './au/uhf-cb.ts';
import { cbFrequencies } from './cb-frequencies.ts';
import type {
  AllocationRow,
  BandPlanRow,
  BandPlanUse,
  ChannelRow,
  Country,
  OffsetRow,
  PowerRow,
  ServiceRow,
} from './country.ts';
import { distressFrequencies, distressSources } from './distress-frequencies.ts';
import { region3Emergency, region3Sources } from './iaru-region-3/emergency.ts';
import { mhz } from './mhz.ts';

const amateur: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Service',
  licence: 'personal',
  classes: [
    { id: 'foundation', name: 'Foundation' },
    { id: 'standard', name: 'Standard' },
    { id: 'advanced', name: 'Advanced' },
  ],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold: 'an amateur qualification; what each class may use is not held here',
  identification: {
    everyMin: 10,
    atStart: true,
    atEnd: false,
    how: 'Give your call sign when you begin and at least every 10 minutes.',
    source: 'au-identification',
    fromMemory: true,
  },
  fromMemory: true,
  source: 'au-amateur',
};

const hfCb: ServiceRow = {
  id: 'cb',
  name: 'HF Citizens’ Band (27 MHz)',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'nothing but a set that meets the class licence',
  source: 'au-class-licence',
};

const hfCbChannels = cbFrequencies.map(
  ([n, at]): ChannelRow => ({
    service: 'cb',
    name: `CB ${n}`,
    receiveHz: mhz(at),
    transmitHz: mhz(at),
    maxWidthHz: 10_000,
    kinds: ['phone'],
    modulations: ['am', 'ssb'],
    note: 'The width is the spacing of the channels.',
    ...(n === 9 && { role: 'emergencies only', roleOnly: true }),
    source: 'acma-cb',
  }),
);

const all27 = {
  service: 'cb',
  fromHz: mhz('26.965'),
  toHz: mhz('27.405'),
  measure: 'output',
  fromMemory: true,
  source: 'au-power',
} as const;
const hfCbPower: readonly PowerRow[] = [
  { ...all27, maxW: 4, modulations: ['am'], note: 'mean power of the carrier' },
  { ...all27, maxW: 12, modulations: ['ssb'], note: 'peak envelope power' },
];

const memory = { service: 'amateur', fromMemory: true, source: 'au-amateur' } as const;
const band = (name: string, from: string, to: string): AllocationRow => ({
  ...memory,
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  note: 'What each qualification may use is not held here.',
});
const plan = (name: string, from: string, to: string, use: BandPlanUse, label: string): BandPlanRow => ({
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  use,
  label,
  fromMemory: true,
  source: 'au-amateur',
});
const shift = (name: string, from: string, to: string, usual: readonly string[]): OffsetRow => ({
  ...memory,
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  usualHz: usual.map(mhz),
  alsoHz: [],
});

export const australia: Country = {
  code: 'au',
  name: 'Australia',
  asOf: '2025-10-01',
  caution:
    'Citizens’ band rules of Australia as published before the class licence of 2025, whose schedule was not read; amateur rows from memory. Not legal advice.',
  exposure: 'icnirp',
  mainsHz: 50,
  sources: {
    'au-class-licence': {
      document: 'Radiocommunications (Citizen Band Radio Stations) Class Licence 2025, F2025L01088',
      date: '2025-10-01',
    },
    'acma-cb': { document: 'ACMA, Citizen band radio stations class licence (web page)', date: '2025-10-01' },
    acrem: {
      document:
        'Emergency-monitoring group’s UHF CB channel list; class licence of 2015, section 6(a), as quoted',
      date: '2015-01-01',
    },
    'au-held-back': { document: 'UHF CB channel lists', section: 'channels 61 to 63', fromMemory: true },
    'au-power': { document: 'Citizen Band Radio Stations Class Licence', section: 'power', fromMemory: true },
    'au-identification': {
      document: 'Amateur class licence of Australia; ITU Radio Regulations No. 25.9',
      section: 'call signs',
      fromMemory: true,
    },
    'au-amateur': {
      document: 'Amateur bands, repeater shifts and calling frequencies of Australia',
      fromMemory: true,
    },
    ...distressSources,
    ...region3Sources,
  },
  services: [amateur, uhfCbService, hfCb],
  allocations: [
    band('160 m', '1.8', '1.875'),
    band('80 m', '3.5', '3.7'),
    band('80 m', '3.776', '3.8'),
    band('40 m', '7.0', '7.3'),
    band('30 m', '10.1', '10.15'),
    band('20 m', '14.0', '14.35'),
    band('17 m', '18.068', '18.168'),
    band('15 m', '21.0', '21.45'),
    band('12 m', '24.89', '24.99'),
    band('10 m', '28.0', '29.7'),
    band('6 m', '50', '54'),
    band('2 m', '144', '148'),
    band('70 cm', '430', '450'),
    band('23 cm', '1240', '1300'),
  ],
  emissions: [],
  widths: [],
  powers: [...uhfCbPower, ...hfCbPower],
  barredStations: [],
  bandPlan: [
    ...region3Emergency,
    plan('2 m', '145.800', '146.000', 'satellite', 'satellites'),
    plan('2 m', '146.500', '146.500', 'calling', 'FM calling'),
    plan('2 m', '146.600', '147.000', 'repeater-output', 'repeater outputs'),
    plan('70 cm', '435.000', '438.000', 'satellite', 'satellites'),
    plan('70 cm', '439.000', '439.000', 'calling', 'FM calling'),
    plan('70 cm', '438.000', '440.000', 'repeater-output', 'repeater outputs'),
  ],
  offsets: [
    ...uhfCbOffsets,
    shift('2 m', '146.600', '147.000', ['-0.6']),
    shift('2 m', '147.000', '147.000', ['-0.6']),
    shift('2 m', '147.000', '147.400', ['0.6']),
    shift('70 cm', '438.000', '440.000', ['-5', '-7']),
  ],
  channels: [...uhfCbChannels, ...hfCbChannels],
  listenOnly: distressFrequencies,
  areas: [],
  rasters: [],
};
