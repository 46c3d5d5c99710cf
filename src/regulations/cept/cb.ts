import { cbFrequencies } from '../cb-frequencies.ts';
import type { ChannelRow, PowerRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* The 27 MHz citizens' band of the CEPT countries: the 40 channels, FM, AM and single sideband. */
const service = 'cb';

export const ceptCbService: ServiceRow = {
  id: service,
  name: 'Citizens’ Band',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'no licence in most countries; a set made for the CEPT citizens’ band',
  source: 'cept-cb',
};

export const ceptCbChannels: readonly ChannelRow[] = cbFrequencies.map(([n, at]) => ({
  service,
  name: `CB ${n}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 10_000,
  kinds: ['phone'],
  modulations: ['fm', 'am', 'ssb'],
  note: 'The width is the spacing of the channels.',
  source: 'cept-cb',
}));

const all = {
  service,
  fromHz: mhz('26.965'),
  toHz: mhz('27.405'),
  measure: 'output',
  source: 'cept-cb-power',
} as const;

export const ceptCbPower: readonly PowerRow[] = [
  { ...all, maxW: 4, modulations: ['fm', 'am'], fromMemory: true },
  { ...all, maxW: 12, modulations: ['ssb'], note: 'peak envelope power, since 27 June 2014' },
];
