import type {
  AllocationRow,
  BandPlanRow,
  BandPlanUse,
  BarredStationRow,
  OffsetRow,
  PowerRow,
  RasterRow,
  ServiceRow,
  WidthRow,
} from '../country.ts';
import { mhz } from '../mhz.ts';
import type { sources } from './sources.ts';

/*
 * Amateur service of Canada, RBR-4 Issue 3 read in quotations. Power is RF output into a matched load; the other
 * way of reckoning it, direct-current input, is not held here. The band plans are of 1995.
 */
type Key = keyof typeof sources;

export const amateurService: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Radio Service',
  licence: 'personal',
  classes: [
    { id: 'basic', name: 'Basic' },
    { id: 'basic-morse', name: 'Basic and Morse' },
    { id: 'basic-honours', name: 'Basic with Honours' },
    { id: 'advanced', name: 'Basic and Advanced' },
  ],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold:
    'an Amateur Radio Operator Certificate with the qualification; a repeater is installed by holders of Advanced',
  identification: {
    everyMin: 30,
    atStart: true,
    atEnd: true,
    how: 'Give your call sign at the beginning and end of each exchange or test and at least every 30 minutes, in English or French.',
    source: 'rbr-4-9',
  },
  source: 'rbr-4-10',
};

const belowThirty = { classes: ['basic-morse', 'basic-honours', 'advanced'] };
const memory = { fromMemory: true } as const;
const band = (
  name: string,
  from: string,
  to: string,
  source: Key,
  extra: Partial<AllocationRow> = {},
): AllocationRow => ({ service: 'amateur', band: name, fromHz: mhz(from), toHz: mhz(to), source, ...extra });
const hf = (name: string, from: string, to: string): AllocationRow =>
  band(name, from, to, 'rbr-4-hf', { ...belowThirty, ...memory });

export const amateurAllocations: readonly AllocationRow[] = [
  hf('160 m', '1.8', '2.0'),
  hf('80 m', '3.5', '4.0'),
  hf('60 m', '5.3305', '5.3335'),
  hf('60 m', '5.3465', '5.3495'),
  hf('60 m', '5.3515', '5.3665'),
  hf('60 m', '5.3715', '5.3745'),
  hf('60 m', '5.4035', '5.4065'),
  hf('40 m', '7.0', '7.3'),
  band('30 m', '10.10', '10.15', 'rbr-4-4', belowThirty),
  hf('20 m', '14.0', '14.35'),
  hf('17 m', '18.068', '18.168'),
  hf('15 m', '21.0', '21.45'),
  hf('12 m', '24.89', '24.99'),
  band('10 m', '28.0', '29.7', 'rbr-4-4', belowThirty),
  band('6 m', '50', '54', 'rbr-4-4'),
  band('2 m', '144', '148', 'rbr-4-4'),
  band('1.25 m', '219', '220', 'rbr-4-4', { note: 'secondary' }),
  band('1.25 m', '220', '222', 'rbr-4-4', {
    condition: 'only in exceptional circumstances, for disaster relief',
  }),
  band('1.25 m', '222', '225', 'rbr-4-4'),
  band('70 cm', '430', '450', 'rbr-4-4', { note: 'secondary to radiolocation' }),
  band('33 cm', '902', '928', 'rbr-4-4'),
  band('23 cm', '1240', '1300', 'rbr-4-4', memory),
];

const width = (from: string, to: string, maxWidthHz: number): WidthRow => ({
  service: 'amateur',
  fromHz: mhz(from),
  toHz: mhz(to),
  maxWidthHz,
  source: 'rbr-4-4',
});

export const amateurWidths: readonly WidthRow[] = [
  width('1.8', '4.0', 6_000),
  width('5.3305', '5.4065', 2_800),
  width('7.0', '7.3', 6_000),
  width('10.10', '10.15', 1_000),
  width('14.0', '24.99', 6_000),
  width('28.0', '29.7', 20_000),
  width('50', '54', 30_000),
  width('144', '148', 30_000),
  width('219', '225', 100_000),
  width('430', '450', 12_000_000),
  width('902', '928', 12_000_000),
];

const all = {
  service: 'amateur',
  fromHz: mhz('1.8'),
  toHz: mhz('1300'),
  measure: 'output',
  source: 'rbr-4-10',
} as const;
const basics = ['basic', 'basic-morse', 'basic-honours'];
const carrier = { modulations: ['am', 'fm', 'digital'], note: 'carrier power' } as const;

const sixtyMetres = (from: string, to: string, maxW: number, measure: PowerRow['measure']): PowerRow => ({
  service: 'amateur',
  fromHz: mhz(from),
  toHz: mhz(to),
  maxW,
  measure,
  ...memory,
  source: 'rbr-4-hf',
});

export const amateurPower: readonly PowerRow[] = [
  { ...all, maxW: 560, classes: basics, modulations: ['ssb'], note: 'peak envelope power' },
  { ...all, maxW: 190, classes: basics, ...carrier },
  { ...all, maxW: 2250, classes: ['advanced'], modulations: ['ssb'], note: 'peak envelope power' },
  { ...all, maxW: 750, classes: ['advanced'], ...carrier },
  sixtyMetres('5.3305', '5.3335', 100, 'erp'),
  sixtyMetres('5.3465', '5.3495', 100, 'erp'),
  sixtyMetres('5.3515', '5.3665', 15, 'eirp'),
  sixtyMetres('5.3715', '5.3745', 100, 'erp'),
  sixtyMetres('5.4035', '5.4065', 100, 'erp'),
];

/** Automatic retransmission below 29.5 MHz only of stations qualified below 30 MHz: a repeater there cannot know them. */
export const amateurBarredStations: readonly BarredStationRow[] = [
  {
    service: 'amateur',
    stations: ['repeater'],
    fromHz: mhz('1.8'),
    toHz: mhz('29.5'),
    source: 'rbr-4-11',
    note: 'unless it relays only stations qualified below 30 MHz',
  },
];

const plan =
  (name: string, source: Key) =>
  (from: string, to: string, use: BandPlanUse, label: string): BandPlanRow => ({
    band: name,
    fromHz: mhz(from),
    toHz: mhz(to),
    use,
    label,
    source,
  });
const m2 = plan('2 m', 'rac-2m');
const cm70 = plan('70 cm', 'rac-70cm');

export const amateurBandPlan: readonly BandPlanRow[] = [
  m2('144.000', '144.100', 'weak-signal', 'moonbounce and telegraphy'),
  m2('144.100', '144.275', 'weak-signal', 'weak signal'),
  m2('144.200', '144.200', 'calling', 'SSB calling'),
  m2('144.275', '144.300', 'beacon', 'beacons'),
  m2('144.300', '144.500', 'satellite', 'satellite and digital'),
  m2('144.390', '144.390', 'positions', 'APRS position packets'),
  m2('144.500', '144.900', 'repeater-input', 'repeater inputs'),
  m2('144.900', '145.100', 'digital', 'digital, 20 kHz channels'),
  m2('145.100', '145.500', 'repeater-output', 'repeater outputs'),
  m2('145.500', '145.590', 'satellite', 'links of crewed spacecraft'),
  m2('145.590', '145.790', 'digital', 'digital, 20 kHz channels'),
  m2('145.800', '146.000', 'satellite', 'satellites'),
  m2('146.010', '146.370', 'repeater-input', 'repeater inputs'),
  m2('146.400', '146.580', 'simplex', 'FM simplex'),
  m2('146.520', '146.520', 'calling', 'FM calling'),
  m2('146.610', '147.390', 'repeater-output', 'repeater outputs'),
  m2('147.420', '147.570', 'simplex', 'FM simplex'),
  m2('147.600', '147.990', 'repeater-input', 'repeater inputs'),

  cm70('433.000', '434.800', 'digital', 'digital'),
  cm70('435.000', '438.000', 'satellite', 'satellites'),
  cm70('442.000', '445.000', 'repeater-output', 'repeater outputs'),
  cm70('446.000', '446.000', 'calling', 'FM calling'),
  cm70('446.000', '446.175', 'simplex', 'FM simplex'),
  cm70('446.200', '446.375', 'link', 'remote bases'),
  cm70('446.800', '446.975', 'digital', 'digital'),
  cm70('447.000', '450.000', 'repeater-input', 'repeater inputs'),
];

const shift = (name: string, from: string, to: string, usual: readonly string[], source: Key): OffsetRow => ({
  service: 'amateur',
  band: name,
  fromHz: mhz(from),
  toHz: mhz(to),
  usualHz: usual.map(mhz),
  alsoHz: [],
  source,
});

/** By subtraction of the plan's blocks. At 147.000 either sign falls on an input. */
export const amateurOffsets: readonly OffsetRow[] = [
  shift('2 m', '145.100', '145.500', ['-0.6'], 'rac-2m'),
  shift('2 m', '146.610', '146.985', ['-0.6'], 'rac-2m'),
  shift('2 m', '147.000', '147.000', ['0.6', '-0.6'], 'rac-2m'),
  shift('2 m', '147.000', '147.390', ['0.6'], 'rac-2m'),
  shift('70 cm', '442.000', '445.000', ['5'], 'rac-70cm'),
];

const raster = (from: string, to: string, stepHz: number): RasterRow => ({
  fromHz: mhz(from),
  toHz: mhz(to),
  stepsHz: [stepHz],
  source: 'rac-2m',
});

export const amateurRasters: readonly RasterRow[] = [
  raster('144.910', '145.090', 20_000),
  raster('145.590', '145.790', 20_000),
  raster('146.415', '146.595', 15_000),
  raster('147.420', '147.570', 30_000),
];
