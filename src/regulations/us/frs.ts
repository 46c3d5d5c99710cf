import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* Family Radio Service, 47 CFR part 95 subpart B: 22 channels, hand-held sets with a fixed antenna. */
const service = 'frs';

export const frsService: ServiceRow = {
  id: service,
  name: 'Family Radio Service',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  // Sets of before 2017 were certified for GMRS as well, and are still in use: no word against those (from memory).
  certifiedApart: { from: ['amateur', 'murs', 'cb'], source: 'cfr-95.587' },
  mustHold: 'no licence; a hand-held set certified for FRS, whose antenna cannot be taken off',
  source: 'cfr-95-frs',
};

const channel = (n: number, at: string, maxW: number): ChannelRow => ({
  service,
  name: `FRS ${n}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 12_500,
  maxW,
  measure: 'erp',
  stations: ['handheld'],
  kinds: ['phone'],
  modulations: ['fm'],
  source: 'cfr-95.563',
});

export const frsChannels: readonly ChannelRow[] = [
  channel(1, '462.5625', 2),
  channel(2, '462.5875', 2),
  channel(3, '462.6125', 2),
  channel(4, '462.6375', 2),
  channel(5, '462.6625', 2),
  channel(6, '462.6875', 2),
  channel(7, '462.7125', 2),
  channel(8, '467.5625', 0.5),
  channel(9, '467.5875', 0.5),
  channel(10, '467.6125', 0.5),
  channel(11, '467.6375', 0.5),
  channel(12, '467.6625', 0.5),
  channel(13, '467.6875', 0.5),
  channel(14, '467.7125', 0.5),
  channel(15, '462.5500', 2),
  channel(16, '462.5750', 2),
  channel(17, '462.6000', 2),
  channel(18, '462.6250', 2),
  channel(19, '462.6500', 2),
  channel(20, '462.6750', 2),
  channel(21, '462.7000', 2),
  channel(22, '462.7250', 2),
];
