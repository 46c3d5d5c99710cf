import type { ChannelRow, PowerRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* The older British citizens' band, 27/81, FM only: 40 channels 10 kHz apart from 27.60125 MHz. */
const service = 'cb';

export const ukCbChannels: readonly ChannelRow[] = Array.from({ length: 40 }, (_, k): ChannelRow => {
  const atHz = mhz('27.60125') + 10_000 * k;
  return {
    service,
    name: `UK CB ${k + 1}`,
    receiveHz: atHz,
    transmitHz: atHz,
    maxWidthHz: 10_000,
    kinds: ['phone'],
    modulations: ['fm'],
    fromMemory: true,
    source: 'uk-cb-27-81',
  };
});

export const ukCbPower: readonly PowerRow[] = [
  {
    service,
    fromHz: mhz('27.60125'),
    toHz: mhz('27.99125'),
    maxW: 4,
    measure: 'output',
    fromMemory: true,
    source: 'uk-cb-27-81',
  },
];
