import type {
  AllocationRow,
  AreaRow,
  BandPlanRow,
  BandPlanUse,
  OffsetRow,
  PowerRow,
  ServiceRow,
} from '../country.ts';
import { around } from '../ground.ts';
import { mhz } from '../mhz.ts';
import type { sources } from './sources.ts';

/*
 * Classes and powers since 21 February 2024. The regulator's statement gives general limits (25, 100 and, where
 * the service is primary, 1000 W); by band they stand in an unofficial guide that contradicts it in two places.
 * There the row follows the statement, or the lower figure, and says so.
 */
type Key = keyof typeof sources;

export const amateurService: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Service',
  licence: 'personal',
  classes: [
    { id: 'foundation', name: 'Foundation' },
    { id: 'intermediate', name: 'Intermediate' },
    { id: 'full', name: 'Full' },
  ],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold: 'an amateur licence: Foundation, Intermediate or Full',
  identification: {
    atStart: false,
    atEnd: false,
    how: 'Give your call sign as often as is practicable while you transmit.',
    source: 'uk-licence-21b',
  },
  source: 'ofcom-2023',
};

const band = (
  name: string,
  from: string,
  to: string,
  source: Key,
  extra: Partial<AllocationRow> = {},
): AllocationRow => ({ service: 'amateur', band: name, fromHz: mhz(from), toHz: mhz(to), source, ...extra });
const memory = { fromMemory: true } as const;

/** The pieces of 60 m that Full has; whether they still stand in the schedule of the licence was not read. */
const sixtyMetres: readonly (readonly [from: string, to: string])[] = [
  ['5.2585', '5.2640'],
  ['5.2760', '5.2840'],
  ['5.2885', '5.2920'],
  ['5.2980', '5.3070'],
  ['5.3130', '5.3230'],
  ['5.3330', '5.3380'],
  ['5.3540', '5.3580'],
  ['5.3620', '5.3745'],
  ['5.3780', '5.3820'],
  ['5.3950', '5.4015'],
  ['5.4035', '5.4065'],
];

export const amateurAllocations: readonly AllocationRow[] = [
  band('160 m', '1.810', '2.000', 'uk-hf', memory),
  band('80 m', '3.500', '3.800', 'uk-hf', memory),
  ...sixtyMetres.map(([from, to]) => band('60 m', from, to, 'uk-hf', { classes: ['full'], ...memory })),
  band('40 m', '7.000', '7.200', 'uk-hf', memory),
  band('30 m', '10.100', '10.150', 'uk-hf', memory),
  band('20 m', '14.000', '14.350', 'uk-hf', memory),
  band('17 m', '18.068', '18.168', 'uk-hf', memory),
  band('15 m', '21.000', '21.450', 'uk-hf', memory),
  band('12 m', '24.890', '24.990', 'uk-hf', memory),
  band('10 m', '28.000', '29.700', 'uk-hf', memory),
  band('6 m', '50', '52', 'uk-guide'),
  band('4 m', '70.0', '70.5', 'uk-guide'),
  band('2 m', '144', '146', 'uk-guide'),
  band('70 cm', '430', '440', 'uk-guide'),
  band('23 cm', '1240', '1325', 'uk-guide', { classes: ['intermediate', 'full'] }),
];

const power = (
  from: string,
  to: string,
  maxW: readonly [foundation: number, intermediate: number, full: number],
  source: Key,
  extra: Partial<PowerRow> = {},
): PowerRow[] =>
  maxW.map((watts, k) => ({
    service: 'amateur',
    fromHz: mhz(from),
    toHz: mhz(to),
    maxW: watts,
    measure: 'output',
    classes: [amateurService.classes[k]?.id ?? ''],
    source,
    ...extra,
  }));
const forty = {
  service: 'amateur',
  fromHz: mhz('430'),
  toHz: mhz('432'),
  measure: 'erp',
  source: 'uk-guide',
} as const;

export const amateurPower: readonly PowerRow[] = [
  ...power('1.810', '29.700', [25, 100, 1000], 'ofcom-2023', {
    note: 'The general limits; less where the service is secondary.',
  }),
  {
    service: 'amateur',
    fromHz: mhz('5.2585'),
    toHz: mhz('5.4065'),
    maxW: 100,
    measure: 'output',
    classes: ['full'],
    ...memory,
    source: 'uk-hf',
  },
  ...power('50', '51', [25, 100, 1000], 'ofcom-2023', {
    note: 'The unofficial guide prints about 400 W for Full.',
  }),
  ...power('51', '52', [25, 100, 100], 'uk-guide'),
  ...power('70.0', '70.5', [25, 100, 160], 'uk-guide'),
  ...power('144', '146', [25, 100, 1000], 'uk-guide'),
  { ...forty, measure: 'output', maxW: 25, classes: ['foundation'] },
  { ...forty, maxW: 40, classes: ['intermediate', 'full'] },
  ...power('432', '440', [25, 100, 400], 'uk-guide').map((row) =>
    // Only the figure of Full is remembered; the guide contradicts the regulator's general rule there.
    row.maxW === 400 ? { ...row, fromMemory: true as const, note: 'The guide prints 1000 W.' } : row,
  ),
  {
    service: 'amateur',
    fromHz: mhz('1240'),
    toHz: mhz('1325'),
    maxW: 50,
    measure: 'output',
    classes: ['intermediate'],
    source: 'uk-guide',
  },
  {
    service: 'amateur',
    fromHz: mhz('1240'),
    toHz: mhz('1325'),
    maxW: 400,
    measure: 'output',
    classes: ['full'],
    source: 'uk-guide',
  },
];

export const amateurAreas: readonly AreaRow[] = [
  {
    service: 'amateur',
    area: 'within 100 km of Charing Cross, London',
    polygon: around([51 + 30.5 / 60, -(7 + 24 / 60) / 60], 100),
    fromHz: mhz('431'),
    toHz: mhz('432'),
    source: 'br68-schedule',
    note: 'From the old licence; read your schedule.',
  },
];

const plan = (
  name: string,
  from: string,
  to: string,
  use: BandPlanUse,
  label: string,
  source: Key,
): BandPlanRow => ({ band: name, fromHz: mhz(from), toHz: mhz(to), use, label, source });

export const amateurBandPlan: readonly BandPlanRow[] = [
  plan('6 m', '50.710', '50.890', 'repeater-output', 'repeater outputs', 'rsgb-6m'),
  plan('6 m', '51.210', '51.390', 'repeater-input', 'repeater inputs', 'rsgb-6m'),
  plan(
    '70 cm',
    '430.250',
    '430.300',
    'repeater-output',
    'digital repeater outputs (9 MHz shift)',
    'rsgb-70cm',
  ),
  plan('70 cm', '430.400', '430.775', 'repeater-input', 'digital repeater inputs (9 MHz shift)', 'rsgb-70cm'),
  plan('70 cm', '430.800', '430.800', 'repeater', 'talk-through, 7.6 MHz system', 'rsgb-70cm'),
  plan('70 cm', '430.8125', '430.975', 'repeater-output', 'repeater outputs (7.6 MHz shift)', 'rsgb-70cm'),
  plan('70 cm', '432.775', '432.775', 'repeater', 'talk-through base, 1.6 MHz system', 'rsgb-70cm'),
  plan('70 cm', '433.000', '433.375', 'repeater-output', 'repeater outputs', 'rsgb-70cm'),
  plan('70 cm', '433.550', '433.550', 'simplex', 'talk-in for rallies', 'rsgb-70cm'),
  plan('70 cm', '433.700', '433.700', 'emergency', 'priority channel of the emergency groups', 'uk-priority'),
  plan('70 cm', '434.600', '434.975', 'repeater-input', 'repeater inputs (1.6 MHz shift)', 'rsgb-70cm'),
  plan('70 cm', '438.000', '438.375', 'repeater-input', 'repeater inputs (5 MHz shift)', 'rsgb-70cm'),
  plan('70 cm', '438.4125', '438.575', 'repeater-input', 'repeater inputs (7.6 MHz shift)', 'rsgb-70cm'),
  plan('70 cm', '439.250', '439.300', 'repeater-input', 'digital repeater inputs (9 MHz shift)', 'rsgb-70cm'),
  plan(
    '70 cm',
    '439.400',
    '439.775',
    'repeater-output',
    'digital repeater outputs (9 MHz shift)',
    'rsgb-70cm',
  ),
];

const shift = (
  name: string,
  from: string,
  to: string,
  usual: readonly string[],
  source: Key,
  note?: string,
): OffsetRow => ({
  service: 'amateur',
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  usualHz: usual.map(mhz),
  alsoHz: [],
  source,
  ...(note && { note }),
});

export const amateurOffsets: readonly OffsetRow[] = [
  { ...shift('2 m', '145.600', '145.7875', ['-0.6'], 'rsgb-2m'), fromMemory: true },
  shift('70 cm', '430.250', '430.300', ['9'], 'rsgb-70cm'),
  shift('70 cm', '430.8125', '430.975', ['7.6'], 'rsgb-70cm'),
  shift(
    '70 cm',
    '433.000',
    '433.375',
    ['1.6', '5'],
    'rsgb-70cm',
    'Sign and inputs of the 5 MHz system from memory.',
  ),
  shift('70 cm', '439.400', '439.775', ['-9'], 'rsgb-70cm'),
];
