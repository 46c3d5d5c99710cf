import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* Business radio "Simple UK Light": nineteen frequencies since 2024, of which the fifteen of the older list are known here. */
const service = 'simple-uk-light';

export const simpleUkLightService: ServiceRow = {
  id: service,
  name: 'Business radio, Simple UK Light',
  licence: 'personal',
  classes: [],
  certifiedEquipment: false,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'a Simple UK Light licence (five years); hand-held and mobile sets only',
  source: 'ofcom-business',
};

const channel = (at: string): ChannelRow => ({
  service,
  name: `UK Light ${at}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 12_500,
  maxW: 5,
  measure: 'erp',
  stations: ['handheld', 'mobile'],
  kinds: ['phone', 'data'],
  fromMemory: true,
  source: 'simple-uk-light',
});

export const simpleUkLightChannels: readonly ChannelRow[] = [
  channel('77.6875'),
  channel('86.3375'),
  channel('86.3500'),
  channel('86.3625'),
  channel('86.3750'),
  channel('164.0500'),
  channel('164.0625'),
  channel('169.0875'),
  channel('169.3125'),
  channel('173.0500'),
  channel('173.0625'),
  channel('173.0875'),
  channel('449.3125'),
  channel('449.4000'),
  channel('449.4750'),
];
