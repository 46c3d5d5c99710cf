/** New Zealand: the personal radio service near 477 MHz, the citizens' bands near 27 MHz, and what is known of the amateur bands. */

import { cbFrequencies } from './cb-frequencies.ts';
import type { AllocationRow, ChannelRow, Country, PowerRow, ServiceRow, StationKind } from './country.ts';
import { distressFrequencies, distressSources } from './distress-frequencies.ts';
import { region3Emergency, region3Sources } from './iaru-region-3/emergency.ts';
import { mhz } from './mhz.ts';
import { uhfCbFrequencyHz } from './uhf-cb-frequency.ts';

const amateur: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Service',
  licence: 'personal',
  classes: [{ id: 'general', name: 'General Amateur' }],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold: 'a General Amateur Operator’s Certificate and a call sign',
  identification: {
    everyMin: 15,
    atStart: false,
    atEnd: false,
    how: 'Give your call sign at least every 15 minutes.',
    source: 'nz-identification',
    fromMemory: true,
  },
  fromMemory: true,
  source: 'nz-amateur',
};

const prs: ServiceRow = {
  id: 'prs',
  name: 'Personal Radio Service (UHF)',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: true,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'nothing but a set that meets the general user licence; each repeater has a licence of its own',
  identification: { atStart: false, atEnd: false, how: 'Identify your station clearly.', source: 'nz-old' },
  source: 'nz-2011',
};

const cb: ServiceRow = {
  id: 'cb',
  name: 'Citizens’ Band (26 and 27 MHz)',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  mustHold: 'nothing but a set that meets the general user licence',
  source: 'nz-2011',
};

const worked: readonly StationKind[] = ['handheld', 'mobile', 'base', 'fixed'];

const prsChannel = (_: unknown, k: number): ChannelRow => {
  const n = k + 1;
  const atHz = uhfCbFrequencyHz(n);
  const output = n <= 8 || (n >= 41 && n <= 48);
  const input = (n >= 31 && n <= 38) || (n >= 71 && n <= 78);
  return {
    service: 'prs',
    name: `PRS ${n}`,
    receiveHz: atHz,
    transmitHz: atHz,
    ...(output && { repeaterInputHz: uhfCbFrequencyHz(n + 30) }),
    maxWidthHz: n <= 40 ? 25_000 : 12_500,
    ...(n <= 40 && {
      usualWidthHz: 12_500,
      note: 'Equipment of 12.5 kHz is accepted beside older equipment of 25 kHz (bulletin of 2011).',
    }),
    kinds: ['phone'],
    modulations: ['fm'],
    stations: output ? [...worked, 'repeater'] : worked,
    fromMemory: true,
    source: 'nz-prs-channels',
    ...(input && {
      role: 'what a repeater listens to, never direct',
      roleOnly: true,
      note: 'That an input is not for direct use was read; which channels are inputs is from memory.',
      source: 'nz-old',
    }),
  };
};

/**
 * The bands were read, their channels were not: 40 of 27 MHz as elsewhere, and 40 lower by 635 kHz of the country's own.
 * One number means two frequencies, so the band is a part of the name.
 */
const cbChannels = [
  ['CB26', -635_000],
  ['CB27', 0],
].flatMap(([name, awayHz]) =>
  cbFrequencies.map(([n, at]): ChannelRow => {
    const atHz = mhz(at) + Number(awayHz);
    return {
      service: 'cb',
      name: `${name} ${n}`,
      receiveHz: atHz,
      transmitHz: atHz,
      maxWidthHz: 10_000,
      kinds: ['phone'],
      note: 'The width is the spacing of the channels.',
      fromMemory: true,
      source: 'nz-cb-channels',
    };
  }),
);

/** As in the neighbouring country; a text that gives it was not found. */
const cbPower = (from: string, to: string): readonly PowerRow[] => {
  const all = {
    service: 'cb',
    fromHz: mhz(from),
    toHz: mhz(to),
    measure: 'output',
    fromMemory: true,
    source: 'nz-cb-power',
  } as const;
  return [
    { ...all, maxW: 4, modulations: ['am', 'fm'], note: 'mean power of the carrier' },
    { ...all, maxW: 12, modulations: ['ssb'], note: 'peak envelope power' },
  ];
};

const band = (name: string, from: string, to: string): AllocationRow => ({
  service: 'amateur',
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  fromMemory: true,
  source: 'nz-amateur',
});

export const newZealand: Country = {
  code: 'nz',
  name: 'New Zealand',
  asOf: '2013-04-25',
  caution:
    'Rules of New Zealand from notices of 2011 and 2013 and from memory; the present general user licence was not read. Not legal advice.',
  exposure: 'icnirp',
  mainsHz: 50,
  sources: {
    'nz-2011': {
      document: 'New Zealand radio standards bulletin, issue 31: general user licence for CB and PRS',
      date: '2011-09-01',
    },
    'nz-old': {
      document: 'New Zealand CB association, page on the general licence (without a date, before 2011)',
    },
    'nz-prs-channels': { document: 'AS/NZS 4365, 80-channel raster', fromMemory: true },
    'nz-cb-channels': { document: 'Channels of the citizens’ bands in New Zealand', fromMemory: true },
    'nz-cb-power': {
      document: 'General user licence for citizen band radio',
      section: 'power',
      fromMemory: true,
    },
    'nz-identification': {
      document: 'General user licence for amateur operators in New Zealand; ITU Radio Regulations No. 25.9',
      section: 'call signs',
      fromMemory: true,
    },
    'nz-amateur': { document: 'Amateur bands of New Zealand', fromMemory: true },
    nzart: { document: 'NZART, short-range devices and 70 cm repeaters, issue 2', date: '2013-04-25' },
    ...distressSources,
    ...region3Sources,
  },
  services: [amateur, prs, cb],
  allocations: [
    band('160 m', '1.8', '1.95'),
    band('80 m', '3.5', '3.9'),
    band('40 m', '7.0', '7.3'),
    band('30 m', '10.1', '10.15'),
    band('20 m', '14.0', '14.35'),
    band('17 m', '18.068', '18.168'),
    band('15 m', '21.0', '21.45'),
    band('12 m', '24.89', '24.99'),
    band('10 m', '28.0', '29.7'),
    band('6 m', '50', '54'),
    band('2 m', '144', '148'),
    band('70 cm', '430', '440'),
    band('23 cm', '1240', '1300'),
    { service: 'cb', band: '26 MHz', fromHz: mhz('26.325'), toHz: mhz('26.775'), source: 'nz-2011' },
    { service: 'cb', band: '27 MHz', fromHz: mhz('26.960'), toHz: mhz('27.410'), source: 'nz-2011' },
  ],
  emissions: [],
  widths: [],
  powers: [
    ...cbPower('26.325', '26.775'),
    ...cbPower('26.960', '27.410'),
    {
      service: 'prs',
      fromHz: mhz('476.4'),
      toHz: mhz('477.425'),
      maxW: 5,
      measure: 'output',
      note: 'licence before 2011',
      source: 'nz-old',
    },
    {
      service: 'prs',
      fromHz: mhz('476.4'),
      toHz: mhz('477.425'),
      maxW: 21,
      measure: 'eirp',
      note: 'licence before 2011; taken as EIRP',
      source: 'nz-old',
    },
  ],
  barredStations: [],
  bandPlan: [
    ...region3Emergency,
    {
      band: '2 m',
      fromHz: mhz('145.800'),
      toHz: mhz('146.000'),
      use: 'satellite',
      label: 'satellites',
      fromMemory: true,
      source: 'nz-amateur',
    },
    {
      band: '70 cm',
      fromHz: mhz('435.000'),
      toHz: mhz('438.000'),
      use: 'satellite',
      label: 'satellites',
      fromMemory: true,
      source: 'nz-amateur',
    },
  ],
  offsets: [
    {
      service: 'prs',
      band: 'PRS',
      fromHz: mhz('476.4250'),
      toHz: mhz('476.6125'),
      usualHz: [mhz('0.75')],
      alsoHz: [],
      fixed: true,
      fromMemory: true,
      source: 'nz-prs-channels',
    },
    {
      service: 'amateur',
      band: '70 cm',
      fromHz: mhz('438.000'),
      toHz: mhz('440.000'),
      usualHz: [mhz('-5')],
      alsoHz: [mhz('5')],
      note: 'Inverted pairs are licensed to escape short-range devices.',
      source: 'nzart',
    },
  ],
  channels: [...Array.from({ length: 80 }, prsChannel), ...cbChannels],
  listenOnly: distressFrequencies,
  areas: [],
  rasters: [],
};
