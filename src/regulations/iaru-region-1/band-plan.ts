import type { BandPlanRow, BandPlanUse } from '../country.ts';
import { mhz } from '../mhz.ts';

/*
 * The IARU Region 1 band plans of 2020, 6 m to 23 cm: voluntary, and behind the terms of the national licence.
 * A row without a width had none in the plan, or leaves it to the country. The ranges 144.9625-144.975 and
 * 145.5625-145.575 MHz belong to no row: they are guard space. The 70 cm repeater blocks that some countries
 * turn round stand apart, so that those countries can leave them out.
 */
const segment =
  (band: string, source: string) =>
  (
    from: string,
    to: string,
    maxWidthHz: number | undefined,
    use: BandPlanUse,
    label: string,
  ): BandPlanRow => ({
    band,
    fromHz: mhz(from),
    toHz: mhz(to),
    use,
    label,
    ...(maxWidthHz !== undefined && { maxWidthHz }),
    source,
  });
const spot =
  (band: string, source: string) =>
  (at: string, use: BandPlanUse, label: string): BandPlanRow => ({
    band,
    fromHz: mhz(at),
    toHz: mhz(at),
    use,
    label,
    source,
  });

const m6 = segment('6 m', 'iaru-r1-vhf');
const at6 = spot('6 m', 'iaru-r1-vhf');
const m4 = segment('4 m', 'iaru-r1-vhf');
const at4 = spot('4 m', 'iaru-r1-vhf');
const m2 = segment('2 m', 'iaru-r1-vhf');
const at2 = spot('2 m', 'iaru-r1-vhf');
const cm70 = segment('70 cm', 'iaru-r1-uhf');
const at70 = spot('70 cm', 'iaru-r1-uhf');
const cm23 = segment('23 cm', 'iaru-r1-uhf');
const at23 = spot('23 cm', 'iaru-r1-uhf');
const any = undefined;

export const region1BandPlan: readonly BandPlanRow[] = [
  m6('50.000', '50.100', 500, 'cw', 'telegraphy'),
  at6('50.050', 'calling', 'telegraphy centre of activity'),
  at6('50.090', 'calling', 'telegraphy centre of activity'),
  m6('50.100', '50.200', 2_700, 'weak-signal', 'SSB and telegraphy'),
  at6('50.110', 'calling', 'intercontinental centre of activity'),
  at6('50.150', 'calling', 'international centre of activity'),
  m6('50.200', '50.300', 2_700, 'weak-signal', 'SSB and telegraphy'),
  at6('50.285', 'mixed', 'crossband'),
  m6('50.300', '50.400', 2_700, 'digital', 'narrow band and machine modes'),
  m6('50.400', '50.500', 1_000, 'beacon', 'beacons only'),
  m6('50.500', '50.700', any, 'mixed', 'all modes'),
  m6('50.540', '50.580', any, 'link', 'FM and digital voice gateways'),
  m6('50.600', '50.700', any, 'digital', 'digital communications'),
  at6('50.630', 'calling', 'digital voice calling'),
  m6('50.700', '50.900', 12_000, 'repeater-output', 'FM and digital voice'),
  m6('50.710', '50.890', 12_000, 'repeater-output', 'repeater outputs'),
  m6('50.900', '51.200', any, 'mixed', 'all modes, wideband experiments'),
  m6('51.200', '51.400', 12_000, 'repeater-input', 'FM and digital voice'),
  m6('51.210', '51.390', 12_000, 'repeater-input', 'repeater inputs'),
  m6('51.400', '52.000', any, 'mixed', 'all modes'),
  m6('51.410', '51.590', any, 'simplex', 'FM simplex'),
  at6('51.510', 'calling', 'FM calling'),
  m6('51.810', '51.990', any, 'repeater-output', 'repeater outputs'),
  m6('52.000', '54.000', 500_000, 'mixed', 'all modes, only where allocated'),

  m4('70.000', '70.090', 1_000, 'beacon', 'co-ordinated beacons'),
  m4('70.090', '70.100', 1_000, 'beacon', 'personal beacons'),
  m4('70.100', '70.250', 2_700, 'weak-signal', 'SSB, telegraphy and machine modes'),
  at4('70.185', 'mixed', 'crossband'),
  at4('70.200', 'calling', 'telegraphy and SSB calling'),
  at4('70.250', 'calling', 'meteor scatter'),
  m4('70.250', '70.294', 12_000, 'simplex', 'AM and FM'),
  at4('70.260', 'calling', 'AM and FM calling'),
  at4('70.270', 'digital', 'machine modes'),
  m4('70.294', '70.500', 12_000, 'simplex', 'FM channels, 12.5 kHz apart'),
  at4('70.450', 'calling', 'FM calling'),
  at4('70.3125', 'digital', 'digital communications'),
  at4('70.3250', 'digital', 'digital communications'),
  at4('70.4875', 'digital', 'digital communications'),

  m2('144.000', '144.025', 2_700, 'satellite', 'satellite downlinks only'),
  m2('144.025', '144.100', 500, 'cw', 'telegraphy'),
  at2('144.050', 'calling', 'telegraphy calling'),
  m2('144.100', '144.150', 500, 'digital', 'machine modes and telegraphy'),
  m2('144.150', '144.400', 2_700, 'weak-signal', 'SSB, telegraphy and machine modes'),
  m2('144.195', '144.205', 2_700, 'weak-signal', 'meteor scatter'),
  at2('144.300', 'calling', 'SSB centre of activity'),
  m2('144.400', '144.490', 500, 'beacon', 'beacons only'),
  m2('144.491', '144.493', 500, 'beacon', 'experimental personal beacons'),
  m2('144.500', '144.794', 20_000, 'mixed', 'all modes'),
  at2('144.500', 'image', 'image centre of activity'),
  at2('144.600', 'digital', 'data centre of activity'),
  at2('144.750', 'mixed', 'television talk-back'),
  m2('144.794', '144.9625', 12_000, 'digital', 'digital communications'),
  at2('144.800', 'positions', 'APRS position packets'),
  m2('144.8125', '144.8625', 12_000, 'link', 'digital voice gateways'),
  m2('144.9625', '144.975', any, 'guard', 'guard space'),
  m2('144.975', '145.194', 12_000, 'repeater-input', 'repeater inputs only'),
  m2('145.194', '145.206', 12_000, 'satellite', 'space communication'),
  m2('145.206', '145.5625', 12_000, 'simplex', 'FM and digital voice simplex'),
  at2('145.2375', 'link', 'an FM gateway'),
  at2('145.2875', 'link', 'an FM gateway'),
  at2('145.3375', 'link', 'an FM gateway'),
  at2('145.375', 'calling', 'digital voice calling'),
  at2('145.500', 'calling', 'FM calling'),
  m2('145.5625', '145.575', any, 'guard', 'guard space'),
  m2('145.575', '145.7935', 12_000, 'repeater-output', 'repeater outputs only'),
  m2('145.794', '145.806', 12_000, 'satellite', 'space communication'),
  m2('145.806', '146.000', 12_000, 'satellite', 'satellites only'),

  cm70('430.000', '431.975', 20_000, 'mixed', 'all modes by national planning'),
  cm70('430.400', '430.575', 20_000, 'link', 'digital links'),
  cm70('430.600', '430.925', 20_000, 'repeater', 'digital repeaters'),
  cm70('430.925', '431.025', 20_000, 'mixed', 'multimode channels'),
  cm70('432.000', '432.100', 500, 'cw', 'telegraphy and machine modes'),
  at70('432.050', 'calling', 'telegraphy centre of activity'),
  cm70('432.100', '432.400', 2_700, 'weak-signal', 'SSB, telegraphy and machine modes'),
  at70('432.200', 'calling', 'SSB centre of activity'),
  at70('432.350', 'mixed', 'microwave talk-back'),
  at70('432.370', 'weak-signal', 'meteor scatter'),
  cm70('432.400', '432.490', 500, 'beacon', 'beacons only'),
  cm70('432.500', '432.975', 12_000, 'mixed', 'all modes'),
  at70('432.500', 'positions', 'APRS position packets'),
  cm70('433.400', '433.575', 12_000, 'simplex', 'FM and digital voice simplex'),
  at70('433.400', 'image', 'slow-scan television'),
  at70('433.450', 'calling', 'digital voice calling'),
  at70('433.500', 'calling', 'FM calling'),
  cm70('433.600', '434.000', any, 'mixed', 'all modes'),
  cm70('433.625', '433.775', any, 'digital', 'digital communications'),
  at70('434.000', 'digital', 'centre for digital experiments'),
  cm70('434.000', '434.594', 12_000, 'mixed', 'all modes'),
  cm70('434.450', '434.575', 12_000, 'digital', 'digital communications by exception'),
  cm70('435.000', '436.000', any, 'satellite', 'satellites'),
  cm70('436.000', '438.000', any, 'satellite', 'satellites and data'),
  cm70('438.000', '440.000', any, 'mixed', 'all modes by national planning'),
  cm70('438.025', '438.175', any, 'digital', 'digital communications'),
  cm70('438.200', '438.525', any, 'repeater', 'digital repeaters'),
  cm70('438.550', '438.625', any, 'mixed', 'multimode channels'),
  cm70('439.800', '439.975', any, 'link', 'digital links'),

  cm23('1240.000', '1240.500', 2_700, 'guard', 'reserved'),
  cm23('1240.500', '1240.750', 500, 'beacon', 'beacons, reserved'),
  cm23('1240.750', '1241.000', 20_000, 'guard', 'FM and digital voice, reserved'),
  cm23('1241.000', '1243.250', 20_000, 'mixed', 'all modes'),
  cm23('1242.025', '1242.700', 20_000, 'repeater-output', 'repeater outputs'),
  cm23('1242.725', '1243.250', 20_000, 'digital', 'digital communications'),
  cm23('1243.250', '1260.000', any, 'image', 'television'),
  cm23('1258.150', '1259.350', any, 'repeater-output', 'repeater outputs'),
  cm23('1260.000', '1270.000', any, 'satellite', 'satellites'),
  cm23('1270.000', '1272.000', 20_000, 'mixed', 'all modes'),
  cm23('1270.025', '1270.700', 20_000, 'repeater-input', 'repeater inputs'),
  cm23('1270.725', '1271.250', 20_000, 'digital', 'digital communications'),
  cm23('1272.000', '1290.994', any, 'image', 'television'),
  cm23('1290.994', '1291.481', 20_000, 'repeater-input', 'FM and digital voice repeater inputs'),
  cm23('1291.494', '1296.000', any, 'mixed', 'all modes'),
  cm23('1293.150', '1294.350', any, 'repeater-input', 'repeater inputs'),
  cm23('1296.000', '1296.150', 500, 'cw', 'telegraphy'),
  cm23('1296.150', '1296.800', 2_700, 'weak-signal', 'narrow band'),
  at23('1296.200', 'calling', 'narrow-band centre of activity'),
  cm23('1296.800', '1296.994', 500, 'beacon', 'beacons'),
  cm23('1296.994', '1297.481', 20_000, 'repeater-output', 'FM and digital voice repeater outputs'),
  cm23('1297.494', '1297.981', 20_000, 'simplex', 'FM and digital voice simplex'),
  at23('1297.500', 'calling', 'FM centre of activity'),
  at23('1297.725', 'calling', 'digital voice calling'),
  cm23('1297.900', '1297.975', 20_000, 'link', 'gateways'),
  cm23('1298.000', '1299.000', 20_000, 'mixed', 'mixed use, 25 kHz channels'),
  cm23('1299.000', '1299.750', 150_000, 'digital', 'data channels of 150 kHz'),
  cm23('1299.750', '1300.000', 20_000, 'mixed', '25 kHz channels'),
];

/** The repeater blocks of 70 cm as most of the continent has them; the United Kingdom has several the other way round. */
export const region1Repeaters70cm: readonly BandPlanRow[] = [
  cm70('430.025', '430.375', 20_000, 'repeater-output', 'repeater outputs (1.6 MHz shift)'),
  cm70('431.050', '431.825', 20_000, 'repeater-input', 'repeater inputs (7.6 MHz shift)'),
  cm70('431.625', '431.975', 20_000, 'repeater-input', 'repeater inputs (1.6 MHz shift)'),
  cm70('432.600', '432.975', 12_000, 'repeater-input', 'repeater inputs (2 MHz shift)'),
  cm70('433.000', '433.375', 12_000, 'repeater-input', 'repeater inputs (1.6 MHz shift)'),
  cm70('434.594', '434.981', 12_000, 'repeater-output', 'repeater outputs (1.6 or 2 MHz shift)'),
  cm70('438.650', '439.425', any, 'repeater-output', 'repeater outputs (7.6 MHz shift)'),
];

export const region1Emergency: readonly BandPlanRow[] = [
  spot('80 m', 'iaru-r1-emergency')('3.760', 'emergency', 'emergency centre of activity'),
  spot('40 m', 'iaru-r1-emergency')('7.110', 'emergency', 'emergency centre of activity'),
  spot('20 m', 'iaru-r1-emergency')('14.300', 'emergency', 'emergency centre of activity'),
  spot('17 m', 'iaru-r1-emergency')('18.160', 'emergency', 'emergency centre of activity'),
  spot('15 m', 'iaru-r1-emergency')('21.360', 'emergency', 'emergency centre of activity'),
];
