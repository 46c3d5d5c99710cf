import { cbFrequencies } from '../cb-frequencies.ts';
import type { ChannelRow, PowerRow, ServiceRow, WidthRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Citizens Band, 47 CFR part 95 subpart D. The channel rows hold the limit of AM and FM; single
 * sideband has more power and half the width, in rows of their own.
 */
const service = 'cb';

export const cbService: ServiceRow = {
  id: service,
  name: 'Citizens Band Radio Service',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  certifiedApart: { from: ['amateur'], source: 'cfr-95.935' },
  antennaHeight: { aboveGroundM: 18.3, aboveSupportM: 6.1, source: 'cfr-95.941' },
  mustHold:
    'no licence; a set certified for CB, without an amplifier; at most 5 minutes of talk, then a minute of silence',
  source: 'cfr-95-cb',
};

const channel = (n: number, at: string, extra: Partial<ChannelRow> = {}): ChannelRow => ({
  service,
  name: `CB ${n}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 8_000,
  kinds: ['phone'],
  modulations: ['am', 'fm', 'ssb'],
  source: 'cfr-95.963',
  ...extra,
});

const roles: Readonly<Record<number, Partial<ChannelRow>>> = {
  9: { role: 'emergencies and help to travellers', roleOnly: true },
  19: { role: 'highway channel by custom' },
};

export const cbChannels: readonly ChannelRow[] = cbFrequencies.map(([n, at]) => channel(n, at, roles[n]));

const all = { service, fromHz: mhz('26.965'), toHz: mhz('27.405') } as const;

export const cbPower: readonly PowerRow[] = [
  {
    ...all,
    maxW: 4,
    measure: 'output',
    modulations: ['am', 'fm'],
    source: 'cfr-95.967',
    note: 'mean power of the carrier',
  },
  {
    ...all,
    maxW: 12,
    measure: 'output',
    modulations: ['ssb'],
    source: 'cfr-95.967',
    note: 'peak envelope power',
  },
];

export const cbWidths: readonly WidthRow[] = [
  { ...all, maxWidthHz: 8_000, modulations: ['am', 'fm'], source: 'cfr-95.973' },
  { ...all, maxWidthHz: 4_000, modulations: ['ssb'], source: 'cfr-95.973' },
];
