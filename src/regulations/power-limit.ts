import { areasAt } from './areas-at.ts';
import { channelsSentOn } from './channels.ts';
import type { EmissionKind, Modulation, PowerMeasure, PowerRow, StationKind } from './country.ts';
import type { Point } from './ground.ts';
import { type Law, serviceById } from './law.ts';
import { nearby } from './nearby.ts';
import { holds } from './span.ts';

export interface PowerQuestion {
  readonly service: string;
  readonly frequencyHz: number;
  readonly station: StationKind;
  readonly kind: EmissionKind;
  /** What is left open below is answered by the strictest row that may hold. */
  readonly licenceClass?: string;
  readonly modulation?: Modulation;
  /** Where the station stands, for the areas with a limit of their own; without it they are not looked at. */
  readonly at?: Point;
}

/** A half-wave dipole radiates this much more than an isotropic antenna in its best direction (2.15 dB). */
const dipoleGain = 1.64;

/**
 * The power limits that hold together, each the strictest of its measure (output, ERP, EIRP): those of the law, and
 * those of local rules that are stricter; strictest first as a half-wave dipole would have it. Empty where the rules set none.
 */
export function powerLimits(law: Law, asked: PowerQuestion): readonly PowerRow[] {
  const lawful = strictest([...national(law, asked), ...ofChannels(law, asked), ...ofAreas(law, asked)]);
  const stricter = strictest(local(law, asked)).filter(
    (row) => !lawful.some(({ measure, maxW }) => measure === row.measure && maxW <= row.maxW),
  );
  return [...lawful, ...stricter].toSorted((a, b) => throughDipoleW(a) - throughDipoleW(b));
}

function strictest(rows: readonly PowerRow[]): readonly PowerRow[] {
  return measures.flatMap((measure) =>
    rows
      .filter((row) => row.measure === measure)
      .toSorted((a, b) => a.maxW - b.maxW)
      .slice(0, 1),
  );
}

const measures: readonly PowerMeasure[] = ['output', 'erp', 'eirp'];

/** The strictest of {@link powerLimits}, as a half-wave dipole without feed loss would have it. */
export function powerLimit(law: Law, asked: PowerQuestion): PowerRow | undefined {
  return powerLimits(law, asked)[0];
}

function throughDipoleW({ maxW, measure }: PowerRow): number {
  return measure === 'eirp' ? maxW / dipoleGain : maxW;
}

function applies(row: PowerRow, asked: PowerQuestion): boolean {
  return (
    row.service === asked.service &&
    holds(row, asked.frequencyHz) &&
    (row.stations?.includes(asked.station) ?? true) &&
    (asked.licenceClass === undefined || (row.classes?.includes(asked.licenceClass) ?? true)) &&
    (row.kinds?.includes(asked.kind) ?? true) &&
    (asked.modulation === undefined || (row.modulations?.includes(asked.modulation) ?? true))
  );
}

function national(law: Law, asked: PowerQuestion): readonly PowerRow[] {
  return nearby(law.country.powers, asked.frequencyHz).filter((row) => applies(row, asked));
}

function local(law: Law, asked: PowerQuestion): readonly PowerRow[] {
  return law.local.flatMap((rules) => rules.powers).filter((row) => applies(row, asked));
}

/** Of two channel rows on one frequency the one with more power holds: they are two ways to the same use. */
function ofChannels(law: Law, { service, frequencyHz }: PowerQuestion): readonly PowerRow[] {
  if (!serviceById(law, service)?.channelsOnly) return [];
  return channelsSentOn(law, frequencyHz)
    .filter((row) => row.service === service)
    .flatMap((row): PowerRow[] =>
      row.maxW === undefined
        ? []
        : [
            {
              service,
              fromHz: frequencyHz,
              toHz: frequencyHz,
              maxW: row.maxW,
              measure: row.measure ?? 'output',
              source: row.source,
              ...(row.fromMemory && { fromMemory: row.fromMemory }),
            },
          ],
    )
    .toSorted((a, b) => b.maxW - a.maxW)
    .slice(0, 1);
}

function ofAreas(law: Law, { service, frequencyHz, at }: PowerQuestion): readonly PowerRow[] {
  if (!at) return [];
  return areasAt(law, at[0], at[1], frequencyHz)
    .filter((row) => row.service === service && !row.advisory)
    .flatMap((row): PowerRow[] =>
      row.maxW === undefined
        ? []
        : [
            {
              service,
              fromHz: row.fromHz,
              toHz: row.toHz,
              maxW: row.maxW,
              measure: row.measure ?? 'output',
              source: row.source,
              note: row.area,
              ...(row.fromMemory && { fromMemory: row.fromMemory }),
            },
          ],
    );
}
