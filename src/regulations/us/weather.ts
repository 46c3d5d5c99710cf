import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * NOAA Weather Radio: receive only. Here WX1 to WX7 rise with the frequency, as one federal guide prints them;
 * many radios number them in the order they came into use, so whatever is printed must carry the frequency.
 */
const service = 'weather';

export const weatherService: ServiceRow = {
  id: service,
  name: 'NOAA Weather Radio',
  licence: 'never',
  classes: [],
  certifiedEquipment: false,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'nothing: anybody may listen, nobody but the weather service may transmit',
  source: 'nws-nwr',
};

const channel = (n: number, at: string): ChannelRow => ({
  service,
  name: `WX${n}`,
  receiveHz: mhz(at),
  maxWidthHz: 16_000,
  kinds: ['phone'],
  modulations: ['fm'],
  note: 'Radios number these differently: go by the frequency.',
  source: 'nifog',
});

export const weatherChannels: readonly ChannelRow[] = [
  channel(1, '162.400'),
  channel(2, '162.425'),
  channel(3, '162.450'),
  channel(4, '162.475'),
  channel(5, '162.500'),
  channel(6, '162.525'),
  channel(7, '162.550'),
];
