import type { PowerRow } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * 47 CFR 97.313: peak envelope power at the transmitter's output, on 60 m radiated over a half-wave dipole.
 * Every row holds at once; the strictest of those that apply is the limit. Areas have a file of their own.
 */
const power = (
  from: string,
  to: string,
  maxW: number,
  source: UsSource,
  extra: Partial<PowerRow> = {},
): PowerRow => ({
  service: 'amateur',
  fromHz: mhz(from),
  toHz: mhz(to),
  maxW,
  measure: 'output',
  source,
  ...extra,
});

const belowGeneral = { classes: ['novice', 'technician'] };
const novice = {
  classes: ['novice'],
  note: 'Read in the edition of 1997; still so from memory.',
  fromMemory: true,
} as const;

export const amateurPower: readonly PowerRow[] = [
  power('1.8', '1300', 1500, 'cfr-97.313-b'),
  power('3.525', '3.600', 200, 'cfr-97.313-c', belowGeneral),
  power('5.3305', '5.3335', 100, 'cfr-97.313-i', { measure: 'erp' }),
  power('5.3465', '5.3495', 100, 'cfr-97.313-i', { measure: 'erp' }),
  power('5.3515', '5.3665', 9.15, 'cfr-97.313-i', { measure: 'erp' }),
  power('5.3715', '5.3745', 100, 'cfr-97.313-i', { measure: 'erp' }),
  power('5.4035', '5.4065', 100, 'cfr-97.313-i', { measure: 'erp' }),
  power('7.025', '7.125', 200, 'cfr-97.313-c', belowGeneral),
  power('10.100', '10.150', 200, 'cfr-97.313-c'),
  power('21.025', '21.200', 200, 'cfr-97.313-c', belowGeneral),
  power('28.000', '28.500', 200, 'cfr-97.313-c', belowGeneral),
  power('1.8', '1300', 100, 'cfr-97.203', { stations: ['beacon'] }),
  power('219', '220', 50, 'cfr-97.313-h'),
  power('222', '225', 25, 'cfr-97.313-d', novice),
  power('1270', '1295', 5, 'cfr-97.313-d', novice),
  power('222', '1300', 10, 'cfr-97.313-j', { kinds: ['spread-spectrum'] }),
];
