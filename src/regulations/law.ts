/**
 * The rules a plan is held against: those of a country, and what local coordinators add. The functions that
 * ask about them stand in files of their own beside this one; all are pure.
 */
import type { Source } from '../findings/finding.ts';
import type {
  BandPlanRow,
  BarredStationRow,
  Country,
  OffsetRow,
  PowerRow,
  RasterRow,
  Reading,
  Row,
  ServiceRow,
  Span,
} from './country.ts';

/** A segment that a local coordinator keeps closed to a service. */
export interface ClosedRow extends Row, Span {
  readonly service: string;
  /** Why, in words: "kept for the hospital link". */
  readonly label: string;
}

/**
 * What a local coordinator adds to a country's rules. It can keep a segment for something or restrict it; it
 * has no allocations, emissions or channels, so that nothing the law forbids can be allowed by it.
 */
export interface LocalRules {
  readonly name: string;
  readonly sources: Readonly<Record<string, Source>>;
  readonly bandPlan: readonly BandPlanRow[];
  readonly offsets: readonly OffsetRow[];
  readonly rasters: readonly RasterRow[];
  readonly barredStations: readonly BarredStationRow[];
  readonly powers: readonly PowerRow[];
  readonly closed: readonly ClosedRow[];
}

export interface Law {
  readonly country: Country;
  readonly local: readonly LocalRules[];
}

/**
 * The published text a row rests on, marked as from memory where the row is. A country names every source
 * its rows use (a test holds that); a row of neither the country nor a local file is a fault and throws.
 */
export function sourceOf(law: Law, row: Reading): Source {
  const local = localRulesOf(law, row);
  const source = (local ?? law.country).sources[row.source];
  if (!source) throw new Error(`no source "${row.source}" in the rules of ${(local ?? law.country).name}`);
  return row.fromMemory ? { ...source, fromMemory: true } : source;
}

/** The local rules that a row belongs to; undefined for a row of the country, which is law. */
export function localRulesOf(law: Law, row: Reading): LocalRules | undefined {
  return law.local.find((rules) =>
    [rules.bandPlan, rules.offsets, rules.rasters, rules.barredStations, rules.powers, rules.closed].some(
      (rows: readonly Reading[]) => rows.includes(row),
    ),
  );
}

export function serviceById(law: Law, id: string): ServiceRow | undefined {
  return law.country.services.find((service) => service.id === id);
}

/** The text in which the duty to identify was read; that of the service where the duty names none of its own. */
export function identificationSource(law: Law, service: ServiceRow): Source {
  const { identification: duty } = service;
  return sourceOf(law, duty?.source === undefined ? service : { ...service, source: duty.source });
}

/** How a station of the service must identify itself; undefined where the service asks for nothing. */
export function identification(law: Law, service: string): ServiceRow['identification'] {
  return serviceById(law, service)?.identification;
}
