import type { ChannelRow, ServiceRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Public-safety interoperability channels, as a mobile or hand-held set sees them (National Interoperability
 * Field Operations Guide 2.02). A volunteer group transmits here only with a public-safety licensee's leave.
 * The tone is sent; reception is on carrier squelch.
 */
const service = 'interoperability';

export const interoperabilityService: ServiceRow = {
  id: service,
  name: 'Public-safety interoperability channels',
  licence: 'authority',
  classes: [],
  certifiedEquipment: true,
  callSigns: true,
  repeaters: true,
  storeAndForward: false,
  channelsOnly: true,
  mustHold:
    'the written leave of a public-safety licensee who licenses the use (47 CFR 90.20); no amateur, GMRS or other private licence gives it',
  source: 'nifog',
};

const channel = (
  name: string,
  receive: string,
  transmit: string,
  toneHz: number,
  role: string,
  maxWidthHz = 12_500,
): ChannelRow => ({
  service,
  name,
  receiveHz: mhz(receive),
  transmitHz: mhz(transmit),
  maxWidthHz,
  kinds: ['phone'],
  toneHz,
  role,
  roleOnly: true,
  source: 'nifog',
});
const direct = (name: string, at: string, toneHz: number, role: string): ChannelRow =>
  channel(name, at, at, toneHz, role);
/** A channel by way of a repeater, and its direct form, whose name ends in D. */
const pair = (
  name: string,
  receive: string,
  transmit: string,
  role: string,
  maxWidthHz?: number,
): ChannelRow[] => [
  channel(name, receive, transmit, 156.7, role, maxWidthHz),
  channel(`${name}D`, receive, receive, 156.7, `${role}, direct`, maxWidthHz),
];
/** 14K0F3E, 4 kHz deviation: one copy of the guide has 8TAC94 narrow. */
const wide800 = 14_000;

export const interoperabilityChannels: readonly ChannelRow[] = [
  direct('VCALL10', '155.7525', 156.7, 'VHF calling, direct'),
  direct('VTAC11', '151.1375', 156.7, 'VHF tactical, direct'),
  direct('VTAC12', '154.4525', 156.7, 'VHF tactical, direct'),
  direct('VTAC13', '158.7375', 156.7, 'VHF tactical, direct'),
  direct('VTAC14', '159.4725', 156.7, 'VHF tactical, direct'),
  channel('VTAC33', '159.4725', '151.1375', 136.5, 'VHF tactical by repeater'),
  channel('VTAC34', '158.7375', '154.4525', 136.5, 'VHF tactical by repeater'),
  channel('VTAC35', '159.4725', '158.7375', 136.5, 'VHF tactical by repeater'),
  channel('VTAC36', '151.1375', '159.4725', 136.5, 'VHF tactical by repeater'),
  channel('VTAC37', '154.4525', '158.7375', 136.5, 'VHF tactical by repeater'),
  channel('VTAC38', '158.7375', '159.4725', 136.5, 'VHF tactical by repeater'),
  direct('VSAR16', '155.1600', 127.3, 'search and rescue'),
  direct('VFIRE21', '154.2800', 156.7, 'fire'),
  direct('VMED28', '155.3400', 156.7, 'medical'),
  direct('VLAW31', '155.4750', 156.7, 'law enforcement'),
  ...pair('UCALL40', '453.2125', '458.2125', 'UHF calling'),
  ...pair('UTAC41', '453.4625', '458.4625', 'UHF tactical'),
  ...pair('UTAC42', '453.7125', '458.7125', 'UHF tactical'),
  ...pair('UTAC43', '453.8625', '458.8625', 'UHF tactical'),
  ...pair('8CALL90', '851.0125', '806.0125', '800 MHz calling', wide800),
  ...pair('8TAC91', '851.5125', '806.5125', '800 MHz tactical', wide800),
  ...pair('8TAC92', '852.0125', '807.0125', '800 MHz tactical', wide800),
  ...pair('8TAC93', '852.5125', '807.5125', '800 MHz tactical', wide800),
  ...pair('8TAC94', '853.0125', '808.0125', '800 MHz tactical', wide800),
];
