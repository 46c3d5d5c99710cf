/**
 * What is wrong with tables of rules as tables: rows that name nothing, spans the wrong way round, rows that
 * contradict each other. The tests hold every country to it, and so is every rules file from outside.
 */
import { formatFrequency } from '../radio/format-quantity.ts';
import { plainName } from './channels.ts';
import type { Country, Row, ServiceRow, Span } from './country.ts';
import type { LocalRules } from './law.ts';

export interface TableFlaw {
  /** The table and the position of the row in it, or the key of the source. */
  readonly at: readonly [table: string, row: number | string];
  /** One sentence. */
  readonly text: string;
  /** Untidy, and no reason to refuse the tables. */
  readonly harmless?: true;
}

/** Empty for sound tables. */
export function countryFlaws(country: Country): readonly TableFlaw[] {
  const { channels, services, sources } = country;
  const spans = countrySpans(country);
  return [
    ...unsourced(sources, [...spans, ['services', services], ['channels', channels]], services),
    ...backwards(spans),
    ...namesNothing([...spans, ['channels', channels]], services),
    ...apartFromNothing(services),
    ...overlapping(country),
    ...channelFlaws(country),
  ];
}

/** Empty for sound local rules. @param country the one whose services they speak of */
export function localFlaws(local: LocalRules, country: Country): readonly TableFlaw[] {
  const { bandPlan, offsets, rasters, barredStations, powers, closed } = local;
  const spans = Object.entries({ bandPlan, offsets, rasters, barredStations, powers, closed });
  return [
    ...unsourced(local.sources, spans, []),
    ...backwards(spans),
    ...namesNothing(spans, country.services),
  ];
}

type Table<Kind extends Row> = readonly [name: string, rows: readonly Kind[]];
type Served = Row & { readonly service?: string; readonly classes?: readonly string[] };

function countrySpans(country: Country): readonly Table<Row & Span>[] {
  const { allocations, emissions, widths, powers, barredStations, bandPlan } = country;
  const { offsets, listenOnly, areas, rasters } = country;
  const reserved = { allocations, emissions, widths, powers, barredStations, bandPlan };
  return Object.entries({ ...reserved, offsets, listenOnly, areas, rasters });
}

function unsourced(
  sources: Country['sources'],
  tables: readonly Table<Row>[],
  services: readonly ServiceRow[],
): TableFlaw[] {
  const cited = [
    ...tables.flatMap(([name, rows]) => rows.map((row, k) => ({ name, k, key: row.source }))),
    ...services.flatMap(({ identification, certifiedApart, antennaHeight }, k) =>
      [identification, certifiedApart, antennaHeight].flatMap((duty) =>
        duty?.source === undefined ? [] : [{ name: 'services', k, key: duty.source }],
      ),
    ),
  ];
  const used = new Set(cited.map(({ key }) => key));
  return [
    ...cited.flatMap(({ name, k, key }): TableFlaw[] =>
      Object.hasOwn(sources, key)
        ? []
        : [{ at: [name, k], text: `A row of ${name} names the source ${key}, which is not listed.` }],
    ),
    ...Object.keys(sources).flatMap((key): TableFlaw[] =>
      used.has(key)
        ? []
        : [
            {
              at: ['sources', key],
              text: `The source ${key} is listed and no row uses it.`,
              harmless: true,
            },
          ],
    ),
  ];
}

function backwards(tables: readonly Table<Row & Span>[]): TableFlaw[] {
  return tables.flatMap(([name, rows]) =>
    rows.flatMap(({ fromHz, toHz }, k): TableFlaw[] =>
      Number.isInteger(fromHz) && Number.isInteger(toHz) && fromHz > 0 && fromHz <= toHz
        ? []
        : [{ at: [name, k], text: `A row of ${name} runs from ${fromHz} to ${toHz} Hz.` }],
    ),
  );
}

function namesNothing(tables: readonly Table<Served>[], services: readonly ServiceRow[]): TableFlaw[] {
  return tables.flatMap(([name, rows]) =>
    rows.flatMap((row, k): TableFlaw[] => {
      if (row.service === undefined) return [];
      const service = services.find(({ id }) => id === row.service);
      if (!service) {
        const text = `A row of ${name} names the service ${row.service}, which is not listed.`;
        return [{ at: [name, k], text }];
      }
      return (row.classes ?? [])
        .filter((id) => !service.classes.some((known) => known.id === id))
        .map((id) => ({
          at: [name, k],
          text: `A row of ${name} names the class ${id}, which ${row.service} does not have.`,
        }));
    }),
  );
}

function apartFromNothing(services: readonly ServiceRow[]): TableFlaw[] {
  const known = new Set(services.map(({ id }) => id));
  return services.flatMap(({ id, certifiedApart }, k) =>
    (certifiedApart?.from ?? [])
      .filter((other) => !known.has(other) || other === id)
      .map((other) => ({
        at: ['services', k] as const,
        text: `The equipment of ${id} is kept apart from that of ${other}, which is no other service of the list.`,
      })),
  );
}

function overlapping(country: Country): TableFlaw[] {
  return country.services.flatMap((service) => {
    const classes = service.classes.length > 0 ? service.classes.map(({ id }) => id) : [undefined];
    return classes.flatMap((id) => {
      const rows = country.allocations
        .map((row, k) => ({ row, k }))
        .filter(
          ({ row }) =>
            row.service === service.id && (id === undefined || (row.classes?.includes(id) ?? true)),
        )
        .toSorted((a, b) => a.row.fromHz - b.row.fromHz);
      return rows.slice(1).flatMap(({ row, k }, before): TableFlaw[] => {
        const lower = rows[before]?.row;
        const text = `Two allocations of ${service.id} for ${id ?? 'everybody'} overlap at ${formatFrequency(row.fromHz)} MHz.`;
        return lower && lower.toHz > row.fromHz ? [{ at: ['allocations', k], text }] : [];
      });
    });
  });
}

function channelFlaws(country: Country): TableFlaw[] {
  const seen = new Set<string>();
  return country.channels.flatMap((row, k) => {
    const at = ['channels', k] as const;
    const twice = [row.name, ...(row.alsoNamed ?? [])].flatMap((name): TableFlaw[] => {
      const key = plainName(name);
      const known = seen.has(key);
      seen.add(key);
      return known ? [{ at, text: `Two channels are called ${name}.` }] : [];
    });
    const service = country.services.find(({ id }) => id === row.service);
    const never = service?.licence === 'never' && row.transmitHz !== undefined;
    const pair =
      row.repeaterInputHz !== undefined && (!service?.repeaters || row.repeaterInputHz === row.receiveHz);
    const flaws: TableFlaw[] = [];
    if (never)
      flaws.push({
        at,
        text: `${row.name} has a transmit frequency in a service that is only listened to.`,
      });
    if (pair) flaws.push({ at, text: `${row.name} has a repeater pair that its service cannot have.` });
    return [...twice, ...flaws];
  });
}
