import type { AllocationRow } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * 47 CFR 97.301, ITU Region 2, 160 m to 23 cm: what the class of the control operator may use. One row a
 * class and segment, as the paragraphs of the section have it. The four channels of 60 m are held as centre
 * ± 1.5 kHz, so that an upper-sideband dial 1.5 kHz below the centre lies inside; the signal itself is at
 * most 2.8 kHz wide.
 */
type Segment = readonly [band: string, from: string, to: string];

const held = (classes: readonly string[], source: UsSource, segments: readonly Segment[]): AllocationRow[] =>
  segments.map(([band, from, to]) => ({
    service: 'amateur',
    band,
    fromHz: mhz(from),
    toHz: mhz(to),
    classes,
    source,
  }));

const generalAndUp = ['general', 'advanced', 'extra'];
const technicianAndUp = ['technician', ...generalAndUp];

const fixedDigital =
  'only stations of a fixed point-to-point digital message forwarding system, after 30 days’ written notice ' +
  'to the national society; more is asked within 640 km of a maritime coast station of that band';

export const amateurAllocations: readonly AllocationRow[] = [
  ...held(['extra'], 'cfr-97.301-b', [
    ['160 m', '1.800', '2.000'],
    ['80 m', '3.500', '3.600'],
    ['75 m', '3.600', '4.000'],
    ['40 m', '7.000', '7.300'],
    ['20 m', '14.000', '14.350'],
    ['15 m', '21.000', '21.450'],
  ]),
  ...held(['advanced'], 'cfr-97.301-c', [
    ['160 m', '1.800', '2.000'],
    ['80 m', '3.525', '3.600'],
    ['75 m', '3.700', '4.000'],
    ['40 m', '7.025', '7.300'],
    ['20 m', '14.025', '14.150'],
    ['20 m', '14.175', '14.350'],
    ['15 m', '21.025', '21.200'],
    ['15 m', '21.225', '21.450'],
  ]),
  ...held(['general'], 'cfr-97.301-d', [
    ['160 m', '1.800', '2.000'],
    ['80 m', '3.525', '3.600'],
    ['75 m', '3.800', '4.000'],
    ['40 m', '7.025', '7.125'],
    ['40 m', '7.175', '7.300'],
    ['20 m', '14.025', '14.150'],
    ['20 m', '14.225', '14.350'],
    ['15 m', '21.025', '21.200'],
    ['15 m', '21.275', '21.450'],
  ]),
  ...held(generalAndUp, 'cfr-97.303-h', [
    ['60 m', '5.3305', '5.3335'],
    ['60 m', '5.3465', '5.3495'],
    ['60 m', '5.3515', '5.3665'],
    ['60 m', '5.3715', '5.3745'],
    ['60 m', '5.4035', '5.4065'],
  ]),
  ...held(generalAndUp, 'cfr-97.301-d', [
    ['30 m', '10.100', '10.150'],
    ['17 m', '18.068', '18.168'],
    ['12 m', '24.890', '24.990'],
    ['10 m', '28.000', '29.700'],
  ]),
  ...held(['novice', 'technician'], 'cfr-97.301-e', [
    ['80 m', '3.525', '3.600'],
    ['40 m', '7.025', '7.125'],
    ['15 m', '21.025', '21.200'],
    ['10 m', '28.000', '28.500'],
  ]),
  ...held(technicianAndUp, 'cfr-97.301-a', [
    ['6 m', '50', '54'],
    ['2 m', '144', '148'],
    ['1.25 m', '222', '225'],
    ['70 cm', '420', '450'],
    ['33 cm', '902', '928'],
    ['23 cm', '1240', '1300'],
  ]),
  ...held(technicianAndUp, 'cfr-97.303-l', [['1.25 m', '219', '220']]).map((row) => ({
    ...row,
    condition: fixedDigital,
  })),
  ...held(['novice'], 'cfr-97.301-f', [
    ['1.25 m', '222', '225'],
    ['23 cm', '1270', '1295'],
  ]).map((row) => ({ ...row, fromMemory: true as const })),
];
