import type { ChannelRow, OffsetRow, PowerRow, ServiceRow, StationKind } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * General Mobile Radio Service, 47 CFR part 95 subpart E. 95.1763 allots 30 channels and numbers none: 1 to
 * 22 follow the Family Radio Service, 23 to 30 (or 15R to 22R) for the repeater inputs are usage. No wattage
 * is given for hand-held sets on the main channels; some read them as mobiles, so 50 W is held as the ceiling.
 */
const service = 'gmrs';
const source = 'cfr-95.1763';

export const gmrsService: ServiceRow = {
  id: service,
  name: 'General Mobile Radio Service',
  licence: 'family',
  classes: [],
  certifiedEquipment: true,
  callSigns: true,
  repeaters: true,
  storeAndForward: false,
  channelsOnly: true,
  certifiedApart: { from: ['amateur'], source: 'cfr-95.1761' },
  mustHold:
    'a GMRS licence (no examination; 18 or older), which covers the licensee and immediate family, and a set certified for GMRS',
  identification: {
    everyMin: 15,
    atStart: false,
    atEnd: true,
    how: 'Say your GMRS call sign at the end of an exchange and at least every 15 minutes, in English.',
    source: 'cfr-95.1751',
  },
  source: 'cfr-95-gmrs',
};

const carried: readonly StationKind[] = ['handheld', 'mobile', 'base'];
const anyStation: readonly StationKind[] = [...carried, 'fixed', 'repeater'];
const toRepeater = 'only to reach a repeater, or for brief tests';
const lineA = 'Closed near the Canadian border, see the areas (from memory).';

const handy = (n: number, at: string): ChannelRow => ({
  service,
  name: `GMRS ${n}`,
  receiveHz: mhz(at),
  transmitHz: mhz(at),
  maxWidthHz: 20_000,
  maxW: 5,
  measure: 'erp',
  stations: carried,
  kinds: ['phone'],
  modulations: ['fm'],
  source,
});
const low = (n: number, at: string): ChannelRow => ({
  ...handy(n, at),
  maxWidthHz: 12_500,
  maxW: 0.5,
  stations: ['handheld'],
});
const main = (n: number, at: string, input: string, extra: Partial<ChannelRow> = {}): ChannelRow => ({
  ...handy(n, at),
  maxW: 50,
  measure: 'output',
  stations: anyStation,
  repeaterInputHz: mhz(input),
  ...extra,
});
const input = (n: number, at: string, extra: Partial<ChannelRow> = {}): ChannelRow => ({
  ...handy(n, at),
  alsoNamed: [`GMRS ${n - 8}R`],
  maxW: 50,
  measure: 'output',
  stations: [...carried, 'fixed'],
  role: toRepeater,
  roleOnly: true,
  ...extra,
});

export const gmrsChannels: readonly ChannelRow[] = [
  handy(1, '462.5625'),
  handy(2, '462.5875'),
  handy(3, '462.6125'),
  handy(4, '462.6375'),
  handy(5, '462.6625'),
  handy(6, '462.6875'),
  handy(7, '462.7125'),
  low(8, '467.5625'),
  low(9, '467.5875'),
  low(10, '467.6125'),
  low(11, '467.6375'),
  low(12, '467.6625'),
  low(13, '467.6875'),
  low(14, '467.7125'),
  main(15, '462.5500', '467.5500'),
  main(16, '462.5750', '467.5750'),
  main(17, '462.6000', '467.6000'),
  main(18, '462.6250', '467.6250'),
  main(19, '462.6500', '467.6500', { note: lineA }),
  main(20, '462.6750', '467.6750', { toneHz: 141.3, role: 'customary travel and calling channel' }),
  main(21, '462.7000', '467.7000', { note: lineA }),
  main(22, '462.7250', '467.7250'),
  input(23, '467.5500'),
  input(24, '467.5750'),
  input(25, '467.6000'),
  input(26, '467.6250'),
  input(27, '467.6500', { note: lineA }),
  input(28, '467.6750'),
  input(29, '467.7000', { note: lineA }),
  input(30, '467.7250'),
];

const fixed = (from: string, to: string): PowerRow => ({
  service,
  fromHz: mhz(from),
  toHz: mhz(to),
  maxW: 15,
  measure: 'output',
  stations: ['fixed'],
  source,
});

export const gmrsPower: readonly PowerRow[] = [fixed('462.5500', '462.7250'), fixed('467.5500', '467.7250')];

export const gmrsOffsets: readonly OffsetRow[] = [
  {
    service,
    band: 'GMRS',
    fromHz: mhz('462.5500'),
    toHz: mhz('462.7250'),
    usualHz: [mhz('5')],
    alsoHz: [],
    fixed: true,
    source,
  },
];
