import type { ChannelRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * Where traffic of an emergency gathers in Norway, as a club lists it from the plan of its national society; up
 * to 20 kHz to either side may be used. They are channels by name and no rows of the band plan: elsewhere in
 * Region 1 these frequencies are for something else (433.250 MHz is an input of repeaters).
 */
const at = (frequency: string, extra: Partial<ChannelRow> = {}): ChannelRow => ({
  service: 'amateur',
  name: `Norway emergency ${frequency}`,
  receiveHz: mhz(frequency),
  transmitHz: mhz(frequency),
  maxWidthHz: 12_000,
  kinds: ['phone'],
  modulations: ['fm'],
  role: 'emergency traffic in Norway',
  source: 'norway-emergency',
  ...extra,
});

/** On 4 m outside what the countries have in common, so only to listen to. */
const { transmitHz: _, ...onlyHeard } = at('69.975');

export const norwegianEmergency: readonly ChannelRow[] = [
  at('51.510'),
  onlyHeard,
  at('144.800', { kinds: ['data'], role: 'emergency packets in Norway' }),
  at('145.300'),
  at('433.250'),
];
