import type { Repeater } from '../plan/model.ts';
import { barredStation } from '../regulations/barred-station.ts';
import type { BarredStationRow } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';
import { type PlannedSignal, repeaterServices } from './planned-signals.ts';

/** The segment that bars a repeater from where this signal of one lies; input and output alike (47 CFR 97.205(b)). */
export function barredSegment(law: Law, signal: PlannedSignal): BarredStationRow | undefined {
  const { occupied, services } = signal;
  return services
    .map((service) => barredStation(law, 'repeater', occupied.fromHz, occupied.toHz, service))
    .find((row) => row !== undefined);
}

export function isBarredSegment(law: Law, signal: PlannedSignal): boolean {
  return barredSegment(law, signal) !== undefined;
}

/** Whether the carrier of either end of a repeater stands in such a segment. */
export function reachesBarred(law: Law, repeater: Repeater): boolean {
  return [repeater.outputHz, repeater.inputHz].some((hz) =>
    repeaterServices(law, repeater).some(
      (service) => barredStation(law, 'repeater', hz, hz, service) !== undefined,
    ),
  );
}
