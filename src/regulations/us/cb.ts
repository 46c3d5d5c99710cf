import type { ChannelRow, PowerRow, ServiceRow, WidthRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Citizens Band, 47 CFR part 95 subpart D. The numbers do not rise with the frequency at 23, 24 and 25, and
 * leave out five frequencies kept for radio control. The channel rows hold the limit of AM and FM; single
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

export const cbChannels: readonly ChannelRow[] = [
  channel(1, '26.965'),
  channel(2, '26.975'),
  channel(3, '26.985'),
  channel(4, '27.005'),
  channel(5, '27.015'),
  channel(6, '27.025'),
  channel(7, '27.035'),
  channel(8, '27.055'),
  channel(9, '27.065', { role: 'emergencies and help to travellers', roleOnly: true }),
  channel(10, '27.075'),
  channel(11, '27.085'),
  channel(12, '27.105'),
  channel(13, '27.115'),
  channel(14, '27.125'),
  channel(15, '27.135'),
  channel(16, '27.155'),
  channel(17, '27.165'),
  channel(18, '27.175'),
  channel(19, '27.185', { role: 'highway channel by custom' }),
  channel(20, '27.205'),
  channel(21, '27.215'),
  channel(22, '27.225'),
  channel(23, '27.255'),
  channel(24, '27.235'),
  channel(25, '27.245'),
  channel(26, '27.265'),
  channel(27, '27.275'),
  channel(28, '27.285'),
  channel(29, '27.295'),
  channel(30, '27.305'),
  channel(31, '27.315'),
  channel(32, '27.325'),
  channel(33, '27.335'),
  channel(34, '27.345'),
  channel(35, '27.355'),
  channel(36, '27.365'),
  channel(37, '27.375'),
  channel(38, '27.385'),
  channel(39, '27.395'),
  channel(40, '27.405'),
];

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
