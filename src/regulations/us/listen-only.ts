import type { ListenOnlyRow } from '../country.ts';
import { mhz } from '../mhz.ts';

/* What a group may listen to and must not transmit on. A plan cannot presume the emergency that 97.403 speaks of. */
const listen = (from: string, to: string, label: string, source: string, note?: string): ListenOnlyRow => ({
  fromHz: mhz(from),
  toHz: mhz(to),
  label,
  source,
  ...(note && { note }),
});
const remembered = (from: string, to: string, label: string, source: string): ListenOnlyRow => ({
  ...listen(from, to, label, source),
  fromMemory: true,
});

export const listenOnly: readonly ListenOnlyRow[] = [
  listen('121.500', '121.500', 'aeronautical emergency', 'fcc-121.5', 'AM; emergency and distress only'),
  listen('123.100', '123.100', 'aeronautical search and rescue', 'nifog', 'AM; not for exercises'),
  listen(
    '156.800',
    '156.800',
    'marine channel 16, distress and calling',
    'fcc-marine',
    'not for use on land',
  ),
  listen('162.400', '162.550', 'weather broadcast', 'nws-nwr'),
  remembered('117.975', '137.000', 'aeronautical band', 'cfr-87'),
  remembered('156.025', '157.425', 'marine band', 'itu-ap18'),
  remembered('160.625', '162.025', 'marine band, coast stations', 'itu-ap18'),
];
