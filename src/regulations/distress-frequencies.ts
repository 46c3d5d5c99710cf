import type { Source } from '../findings/finding.ts';
import type { ListenOnlyRow } from './country.ts';
import { mhz } from './mhz.ts';

/* Distress frequencies the world over: to be listened to, never planned for transmission. */
export const distressFrequencies: readonly ListenOnlyRow[] = [
  {
    fromHz: mhz('121.500'),
    toHz: mhz('121.500'),
    label: 'aeronautical emergency',
    source: 'itu-distress',
    fromMemory: true,
  },
  {
    fromHz: mhz('156.800'),
    toHz: mhz('156.800'),
    label: 'marine channel 16, distress and calling',
    source: 'itu-distress',
    fromMemory: true,
  },
];

/** What the rows above cite, for the country's own sources. */
export const distressSources = {
  'itu-distress': { document: 'ITU Radio Regulations', section: 'Appendix 15', fromMemory: true },
} as const satisfies Readonly<Record<string, Source>>;
