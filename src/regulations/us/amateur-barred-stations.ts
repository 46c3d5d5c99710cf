import type { BarredStationRow, StationKind } from '../country.ts';
import { mhz } from '../mhz.ts';
import type { UsSource } from './sources.ts';

/*
 * 47 CFR 97.201(b) and 97.205(b): where an auxiliary station or a repeater may not transmit; both say where
 * it may, "except", so what lies below is barred too. 97.221(b): automatic data stations (a digipeater
 * relays with nobody at the controls) below 50 MHz only in named segments; the rows are what lies between.
 * A digipeater sends on the channel it heard, so the repeater's segments do not bind it (97.3(a)).
 */
const bars =
  (stations: StationKind, source: UsSource) =>
  (from: string, to: string, note?: string): BarredStationRow => ({
    service: 'amateur',
    stations: [stations],
    fromHz: mhz(from),
    toHz: mhz(to),
    source,
    ...(note && { note }),
  });

const repeater = bars('repeater', 'cfr-97.205');
const auxiliary = bars('auxiliary', 'cfr-97.201');
const automatic = bars('digipeater', 'cfr-97.221');

export const amateurBarredStations: readonly BarredStationRow[] = [
  repeater('1.8', '28', 'repeaters only on 10 m and shorter waves'),
  repeater('28.0', '29.5'),
  repeater('50.0', '51.0'),
  repeater('144.0', '144.5'),
  repeater('145.5', '146.0'),
  repeater('222.00', '222.15'),
  repeater('431.0', '433.0'),
  repeater('435.0', '438.0'),

  auxiliary('1.8', '144', 'auxiliary stations only on 2 m and shorter waves'),
  auxiliary('144.0', '144.5'),
  auxiliary('145.8', '146.0'),
  auxiliary('219', '220'),
  auxiliary('222.00', '222.15'),
  auxiliary('431', '433'),
  auxiliary('435', '438'),

  automatic('1.8', '3.585'),
  automatic('3.600', '7.100'),
  automatic('7.105', '10.140'),
  automatic('10.150', '14.0950'),
  automatic('14.0995', '14.1005'),
  automatic('14.112', '18.105'),
  automatic('18.110', '21.090'),
  automatic('21.100', '24.925'),
  automatic('24.930', '28.120'),
  automatic('28.189', '50'),
];
