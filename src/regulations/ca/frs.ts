import type { ChannelRow, PowerRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Family and General Mobile Radio in Canada: one set of licence-exempt rules for both, on the 22 channels of the
 * United States and without its powers, its licence or its repeater inputs (removed in August 2016).
 */
const service = 'frs';

export const frsService: ServiceRow = {
  id: service,
  name: 'Family Radio Service and General Mobile Radio Service',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold:
    'no licence; a set certified in Canada under RSS-210 (hand-held with a fixed antenna, from memory); no voice scrambling',
  source: 'rss-210',
};

const channel = (n: number, at: string): ChannelRow => ({
  service,
  name: `FRS ${n}`,
  alsoNamed: [`GMRS ${n}`],
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 12_500,
  kinds: ['phone'],
  modulations: ['fm'],
  source: 'frs-channels',
});

export const frsChannels: readonly ChannelRow[] = [
  channel(1, '462.5625'),
  channel(2, '462.5875'),
  channel(3, '462.6125'),
  channel(4, '462.6375'),
  channel(5, '462.6625'),
  channel(6, '462.6875'),
  channel(7, '462.7125'),
  channel(8, '467.5625'),
  channel(9, '467.5875'),
  channel(10, '467.6125'),
  channel(11, '467.6375'),
  channel(12, '467.6625'),
  channel(13, '467.6875'),
  channel(14, '467.7125'),
  channel(15, '462.5500'),
  channel(16, '462.5750'),
  channel(17, '462.6000'),
  channel(18, '462.6250'),
  channel(19, '462.6500'),
  channel(20, '462.6750'),
  channel(21, '462.7000'),
  channel(22, '462.7250'),
];

export const frsPower: readonly PowerRow[] = [
  {
    service,
    fromHz: mhz('462.5500'),
    toHz: mhz('462.7250'),
    maxW: 2,
    measure: 'erp',
    fromMemory: true,
    source: 'frs-power',
  },
  {
    service,
    fromHz: mhz('467.5625'),
    toHz: mhz('467.7125'),
    maxW: 0.5,
    measure: 'erp',
    fromMemory: true,
    source: 'frs-power',
  },
];
