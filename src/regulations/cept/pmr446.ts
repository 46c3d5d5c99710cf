import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * PMR446 in the CEPT countries: hand-held sets with a fixed antenna, 0.5 W radiated, no repeaters and no base
 * stations. 16 channels 12.5 kHz apart for FM and digital sets; 32 of 6.25 kHz for digital ones, numbered from
 * the bottom of the band since 2018 (older lists begin in its upper half).
 */
const service = 'pmr446';

export const pmr446Service: ServiceRow = {
  id: service,
  name: 'PMR446',
  licence: 'none',
  classes: [],
  certifiedEquipment: true,
  callSigns: false,
  repeaters: false,
  storeAndForward: false,
  channelsOnly: true,
  mustHold: 'no licence; a hand-held PMR446 set, whose antenna cannot be taken off',
  note: 'Digital sets end a transmission after 180 seconds by the decision of 2005, since withdrawn.',
  source: 'ecc-dec-15-05',
};

const channel = (
  name: string,
  alsoNamed: string,
  atHz: number,
  maxWidthHz: number,
  modulations: ChannelRow['modulations'],
): ChannelRow => ({
  service,
  name,
  alsoNamed: [alsoNamed],
  receiveHz: atHz,
  transmitHz: atHz,
  maxWidthHz,
  maxW: 0.5,
  measure: 'erp',
  stations: ['handheld'],
  kinds: ['phone'],
  ...(modulations && { modulations }),
  source: 'en-303-405',
});
const analogue = (n: number, at: string): ChannelRow =>
  channel(`PMR ${n}`, `PMR446 ${n}`, mhz(at), 12_500, ['fm', 'digital']);
const digital = (_: unknown, k: number): ChannelRow =>
  channel(`PMR digital ${k + 1}`, `PMR446 digital ${k + 1}`, mhz('446.003125') + 6_250 * k, 6_250, [
    'digital',
  ]);

export const pmr446Channels: readonly ChannelRow[] = [
  analogue(1, '446.00625'),
  analogue(2, '446.01875'),
  analogue(3, '446.03125'),
  analogue(4, '446.04375'),
  analogue(5, '446.05625'),
  analogue(6, '446.06875'),
  analogue(7, '446.08125'),
  analogue(8, '446.09375'),
  analogue(9, '446.10625'),
  analogue(10, '446.11875'),
  analogue(11, '446.13125'),
  analogue(12, '446.14375'),
  analogue(13, '446.15625'),
  analogue(14, '446.16875'),
  analogue(15, '446.18125'),
  analogue(16, '446.19375'),
  ...Array.from({ length: 32 }, digital),
];
