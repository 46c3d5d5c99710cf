import type { BandPlanRow, BandPlanUse } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * The voluntary VHF and UHF plan of the national society, 10 m to 23 cm. Local coordinators' plans come
 * first. An edge printed for FM channels is the first or last carrier, not the edge of the signal.
 * Spots (calling frequencies, packet channels) are rows of no width.
 */
const band =
  (name: string, source: UsSource) =>
  (
    from: string,
    to: string,
    use: BandPlanUse,
    label: string,
    extra: Partial<BandPlanRow> = {},
  ): BandPlanRow => ({ band: name, fromHz: mhz(from), toHz: mhz(to), use, label, source, ...extra });
const spots = (
  name: string,
  source: UsSource,
  use: BandPlanUse,
  label: string,
  frequencies: readonly string[],
  extra: Partial<BandPlanRow> = {},
): BandPlanRow[] =>
  frequencies.map((at) => ({ band: name, fromHz: mhz(at), toHz: mhz(at), use, label, source, ...extra }));

const m10 = band('10 m', 'arrl-plan');
const m6 = band('6 m', 'arrl-plan');
const m2 = band('2 m', 'arrl-plan');
const m1 = band('1.25 m', 'arrl-plan');
const cm70 = band('70 cm', 'arrl-plan');
const cm33 = band('33 cm', 'arrl-plan-33cm');
const cm23 = band('23 cm', 'rac-23cm');
const memory = { fromMemory: true } as const;

export const amateurBandPlan: readonly BandPlanRow[] = [
  m10('28.000', '28.070', 'cw', 'CW'),
  m10('28.070', '28.150', 'digital', 'RTTY and data'),
  m10('28.150', '28.190', 'cw', 'CW'),
  m10('28.200', '28.300', 'beacon', 'beacons'),
  m10('28.300', '29.300', 'mixed', 'phone'),
  m10('28.680', '28.680', 'image', 'slow-scan television'),
  m10('29.000', '29.200', 'mixed', 'AM phone'),
  m10('29.300', '29.510', 'satellite', 'satellites'),
  m10('29.520', '29.590', 'repeater-input', 'FM repeater inputs'),
  m10('29.600', '29.600', 'calling', 'national FM simplex calling'),
  m10('29.610', '29.700', 'repeater-output', 'FM repeater outputs'),

  m6('50.0', '50.1', 'cw', 'CW and beacons'),
  m6('50.060', '50.080', 'beacon', 'beacons'),
  m6('50.1', '50.3', 'weak-signal', 'SSB and CW'),
  m6('50.10', '50.125', 'weak-signal', 'long-distance window'),
  m6('50.125', '50.125', 'calling', 'SSB calling'),
  m6('50.3', '50.6', 'mixed', 'all modes'),
  m6('50.6', '50.8', 'digital', 'other than voice'),
  m6('50.62', '50.62', 'packet', 'packet calling'),
  m6('50.8', '51.0', 'model-control', 'radio control of models'),
  m6('51.0', '51.1', 'weak-signal', 'Pacific long-distance window'),
  m6('51.12', '51.48', 'repeater-input', 'repeater inputs'),
  m6('51.5', '51.6', 'simplex', 'FM simplex'),
  m6('51.62', '51.98', 'repeater-output', 'repeater outputs'),
  m6('52.0', '52.48', 'repeater-input', 'repeater inputs'),
  ...spots('6 m', 'arrl-plan', 'simplex', 'FM simplex', [
    '52.02',
    '52.04',
    '52.54',
    '53.0',
    '53.02',
    '53.52',
    '53.9',
  ]),
  m6('52.5', '52.98', 'repeater-output', 'repeater outputs'),
  m6('52.525', '52.525', 'calling', 'national FM simplex calling'),
  m6('53.0', '53.48', 'repeater-input', 'repeater inputs'),
  m6('53.5', '53.98', 'repeater-output', 'repeater outputs'),
  ...spots('6 m', 'arrl-plan', 'model-control', 'radio control of models', [
    '53.1',
    '53.2',
    '53.3',
    '53.4',
    '53.5',
    '53.6',
    '53.7',
    '53.8',
  ]),

  m2('144.00', '144.05', 'weak-signal', 'moonbounce and CW'),
  m2('144.05', '144.10', 'weak-signal', 'CW and weak signals'),
  m2('144.10', '144.20', 'weak-signal', 'moonbounce and weak-signal SSB'),
  m2('144.200', '144.200', 'calling', 'SSB and CW calling'),
  m2('144.200', '144.275', 'weak-signal', 'SSB'),
  m2('144.275', '144.300', 'beacon', 'beacons'),
  m2('144.30', '144.50', 'satellite', 'satellites'),
  m2('144.390', '144.390', 'positions', 'APRS position packets'),
  m2('144.50', '144.60', 'link', 'linear translator inputs'),
  m2('144.60', '144.90', 'repeater-input', 'FM repeater inputs'),
  m2('144.90', '145.10', 'simplex', 'weak signal and FM simplex'),
  ...spots('2 m', 'arrl-plan', 'packet', 'packet', ['145.01', '145.03', '145.05', '145.07', '145.09']),
  ...spots(
    '2 m',
    'packet-usage',
    'packet',
    'packet in common use',
    ['144.91', '144.93', '144.95', '144.97', '144.99'],
    memory,
  ),
  m2('145.10', '145.20', 'repeater-output', 'linear translator outputs, in practice repeater outputs'),
  m2('145.20', '145.50', 'repeater-output', 'FM repeater outputs'),
  m2('145.50', '145.80', 'mixed', 'miscellaneous and experimental; packet in some states'),
  m2('145.80', '146.00', 'satellite', 'satellites only'),
  m2('145.825', '145.825', 'satellite', 'packet by way of space stations'),
  m2('146.01', '146.37', 'repeater-input', 'FM repeater inputs'),
  m2('146.40', '146.58', 'simplex', 'FM simplex'),
  m2('146.520', '146.520', 'calling', 'national FM simplex calling'),
  m2('146.61', '146.97', 'repeater-output', 'FM repeater outputs'),
  m2('147.00', '147.39', 'repeater-output', 'FM repeater outputs'),
  m2('147.42', '147.57', 'simplex', 'FM simplex'),
  m2('147.60', '147.99', 'repeater-input', 'FM repeater inputs'),

  m1('222.000', '222.150', 'weak-signal', 'weak signal'),
  m1('222.000', '222.025', 'weak-signal', 'moonbounce'),
  m1('222.05', '222.06', 'beacon', 'beacons'),
  m1('222.100', '222.100', 'calling', 'SSB and CW calling'),
  m1('222.15', '222.25', 'mixed', 'as the local coordinator chooses'),
  m1('222.25', '223.38', 'repeater-input', 'FM repeater inputs only'),
  m1('223.40', '223.52', 'simplex', 'FM simplex'),
  m1('223.500', '223.500', 'calling', 'national FM simplex calling'),
  m1('223.52', '223.64', 'packet', 'digital and packet'),
  m1('223.64', '223.70', 'link', 'links and control'),
  m1('223.71', '223.85', 'mixed', 'as the local coordinator chooses'),
  m1('223.85', '224.98', 'repeater-output', 'repeater outputs only'),

  cm70('420.00', '426.00', 'image', 'television, links and control'),
  cm70('421.25', '421.25', 'image', 'a television picture carrier'),
  cm70('426.00', '432.00', 'image', 'television simplex'),
  cm70('427.250', '427.250', 'image', 'a television picture carrier'),
  cm70('432.00', '432.07', 'weak-signal', 'moonbounce'),
  cm70('432.07', '432.10', 'weak-signal', 'weak CW'),
  cm70('432.100', '432.100', 'calling', 'SSB and CW calling'),
  cm70('432.10', '432.30', 'weak-signal', 'weak signal and mixed'),
  cm70('432.30', '432.40', 'beacon', 'beacons'),
  cm70('432.40', '433.00', 'weak-signal', 'weak signal and mixed'),
  cm70('433.00', '435.00', 'link', 'auxiliary and repeater links'),
  cm70('435.00', '438.00', 'satellite', 'satellites only'),
  cm70('438.00', '444.00', 'link', 'television repeater inputs and repeater links'),
  cm70('439.250', '439.250', 'image', 'a television picture carrier'),
  cm70('442.00', '445.00', 'repeater', 'repeater outputs and inputs by local choice'),
  cm70('445.00', '447.00', 'mixed', 'shared: links, control, repeaters and simplex'),
  cm70('446.000', '446.000', 'calling', 'national FM simplex calling'),
  cm70('447.00', '450.00', 'repeater', 'repeater outputs and inputs by local choice'),

  cm33('902.000', '902.075', 'repeater-input', 'repeater inputs, or weak signal by region'),
  cm33('902.075', '902.100', 'weak-signal', 'weak-signal CW and SSB'),
  cm33('902.100', '902.125', 'weak-signal', 'weak signal'),
  cm33('902.100', '902.100', 'calling', 'weak-signal calling by regional choice'),
  cm33('902.125', '903.000', 'repeater-input', 'repeater inputs'),
  cm33('903.000', '903.100', 'weak-signal', 'beacons and weak signal'),
  cm33('903.100', '903.400', 'weak-signal', 'weak signal'),
  cm33('903.100', '903.100', 'calling', 'weak-signal calling by regional choice'),
  cm33('903.400', '909.000', 'mixed', 'mixed modes and control links'),
  cm33('906.500', '906.500', 'calling', 'FM simplex calling of the older plan', {
    note: 'The plan of 2013 has 927.500 MHz.',
  }),
  cm33('909.000', '927.000', 'mixed', 'wide modes and television; other repeater splits by region'),
  cm33('927.000', '927.075', 'repeater-output', 'repeater outputs'),
  cm33('927.075', '927.125', 'simplex', 'FM simplex'),
  cm33('927.125', '928.000', 'repeater-output', 'repeater outputs'),
  cm33('927.500', '927.500', 'calling', 'national FM simplex calling, or a regional choice'),

  cm23('1240', '1246', 'image', 'television channel 1'),
  cm23('1246', '1248', 'link', 'narrow FM links and digital, paired with 1258-1260 MHz'),
  cm23('1248', '1252', 'digital', 'digital'),
  cm23('1252', '1258', 'image', 'television channel 2'),
  cm23('1258', '1260', 'link', 'narrow FM links and digital, paired with 1246-1248 MHz'),
  cm23('1260', '1270', 'satellite', 'satellite uplinks and experimental'),
  cm23('1270', '1276', 'repeater-input', 'FM repeater inputs'),
  cm23('1276', '1282', 'image', 'television channel 3'),
  cm23('1282', '1288', 'repeater-output', 'FM repeater outputs'),
  cm23('1288', '1294', 'mixed', 'wide experimental'),
  cm23('1290', '1294', 'repeater-output', 'regional repeater outputs, paired with 1270-1274 MHz', memory),
  cm23('1294', '1295', 'simplex', 'FM simplex'),
  cm23('1294.500', '1294.500', 'calling', 'national FM simplex calling'),
  cm23('1295', '1295.8', 'image', 'image and experimental'),
  cm23('1295.8', '1296.4', 'weak-signal', 'moonbounce and weak signal'),
  cm23('1296.100', '1296.100', 'calling', 'SSB and CW calling'),
  cm23('1296.2', '1296.4', 'beacon', 'beacons', memory),
  cm23('1296.4', '1297', 'weak-signal', 'narrow band'),
  cm23('1297', '1300', 'digital', 'digital'),
];
