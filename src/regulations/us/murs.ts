import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* Multi-Use Radio Service, 47 CFR part 95 subpart J: five channels, 2 W at the transmitter, no repeaters. */
const service = 'murs';

export const mursService: ServiceRow = {
  id: service,
  name: 'Multi-Use Radio Service',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  antennaHeight: { aboveGroundM: 18.3, aboveSupportM: 6.1, source: 'cfr-95.2741' },
  mustHold:
    'no licence; a set certified for MURS, its antenna at most 18.3 m above ground or 6.1 m above what it stands on',
  source: 'cfr-95-murs',
};

const channel = (n: number, at: string, maxWidthHz: number, note?: string): ChannelRow => ({
  service,
  name: `MURS ${n}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz,
  maxW: 2,
  measure: 'output',
  stations: ['handheld', 'mobile', 'base', 'fixed'],
  // A1D A2B A2D A3E F2B F1D F2D F3E G3E: no single sideband, no speech as a stream of bits (95.2771).
  kinds: ['phone', 'data', 'image', 'mcw'],
  modulations: ['am', 'fm'],
  source: 'cfr-95.2763',
  ...(note && { note }),
});

export const mursChannels: readonly ChannelRow[] = [
  channel(1, '151.820', 11_250),
  channel(2, '151.880', 11_250),
  channel(3, '151.940', 11_250),
  channel(4, '154.570', 20_000, 'known as blue dot'),
  channel(5, '154.600', 20_000, 'known as green dot'),
];
