import type { BarredStationRow, Span, StationKind } from './country.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { overlaps } from './span.ts';

/**
 * The row that bars a kind of station from a stretch (the room its signal takes, input and output alike), or
 * undefined. Only amateur rows exist today, but a row of any service counts when none is named.
 */
export function barredStation(
  law: Law,
  station: StationKind,
  fromHz: number,
  toHz: number,
  service?: string,
): BarredStationRow | undefined {
  const stretch: Span = { fromHz, toHz };
  return [
    ...nearby(law.country.barredStations, fromHz, toHz),
    ...law.local.flatMap((rules) => rules.barredStations),
  ].find(
    (row) =>
      row.stations.includes(station) &&
      (service === undefined || row.service === service) &&
      overlaps(row, stretch),
  );
}
