/**
 * What is wrong with a country's tables as tables: rows that name nothing, spans the wrong way round, rows
 * that contradict each other. The tests hold every country to it, and a rules file from outside can be.
 */
import type { Country, Row, Span } from './country.ts';

/** One sentence a flaw; empty for sound tables. */
export function countryFlaws(country: Country): readonly string[] {
  return [
    ...unsourced(country),
    ...backwards(country),
    ...namesNothing(country),
    ...overlapping(country),
    ...channelFlaws(country),
  ];
}

type Table = readonly [name: string, rows: readonly Row[]];

function tables(country: Country): readonly Table[] {
  return [...spanTables(country), ['services', country.services], ['channels', country.channels]];
}

function spanTables(country: Country): readonly [name: string, rows: readonly (Row & Span)[]][] {
  const {
    allocations,
    emissions,
    widths,
    powers,
    barredStations,
    bandPlan,
    offsets,
    listenOnly,
    areas,
    rasters,
  } = country;
  return Object.entries({
    allocations,
    emissions,
    widths,
    powers,
    barredStations,
    bandPlan,
    offsets,
    listenOnly,
    areas,
    rasters,
  });
}

function unsourced(country: Country): string[] {
  const cited = [
    ...tables(country).flatMap(([name, rows]) => rows.map((row) => ({ name, key: row.source }))),
    ...country.services.flatMap((row) =>
      row.identification?.source ? [{ name: 'services', key: row.identification.source }] : [],
    ),
  ];
  return [
    ...cited
      .filter(({ key }) => !country.sources[key])
      .map(({ name, key }) => `A row of ${name} names the source ${key}, which is not listed.`),
    ...Object.keys(country.sources)
      .filter((key) => !cited.some((row) => row.key === key))
      .map((key) => `The source ${key} is listed and no row uses it.`),
  ];
}

function backwards(country: Country): string[] {
  return spanTables(country).flatMap(([name, rows]) =>
    rows
      .filter(
        (row) =>
          !(
            Number.isInteger(row.fromHz) &&
            Number.isInteger(row.toHz) &&
            row.fromHz > 0 &&
            row.fromHz <= row.toHz
          ),
      )
      .map((row) => `A row of ${name} runs from ${row.fromHz} to ${row.toHz} Hz.`),
  );
}

function namesNothing(country: Country): string[] {
  const { allocations, emissions, widths, powers, barredStations, offsets, channels, areas, services } =
    country;
  const served = Object.entries({
    allocations,
    emissions,
    widths,
    powers,
    barredStations,
    offsets,
    channels,
    areas,
  });
  return served.flatMap(
    ([name, rows]: [string, readonly { service: string; classes?: readonly string[] }[]]) =>
      rows.flatMap((row) => {
        const service = services.find(({ id }) => id === row.service);
        if (!service) return [`A row of ${name} names the service ${row.service}, which is not listed.`];
        return (row.classes ?? [])
          .filter((id) => !service.classes.some((known) => known.id === id))
          .map((id) => `A row of ${name} names the class ${id}, which ${row.service} does not have.`);
      }),
  );
}

function overlapping(country: Country): string[] {
  return country.services.flatMap((service) => {
    const classes = service.classes.length > 0 ? service.classes.map(({ id }) => id) : [undefined];
    return classes.flatMap((id) => {
      const rows = country.allocations
        .filter(
          (row) => row.service === service.id && (id === undefined || (row.classes?.includes(id) ?? true)),
        )
        .toSorted((a, b) => a.fromHz - b.fromHz);
      return rows.slice(1).flatMap((row, k) => {
        const before = rows[k];
        return before && before.toHz > row.fromHz
          ? [`Two allocations of ${service.id} for ${id ?? 'everybody'} overlap at ${row.fromHz} Hz.`]
          : [];
      });
    });
  });
}

function channelFlaws(country: Country): string[] {
  const seen = new Map<string, string>();
  return country.channels.flatMap((row) => {
    const twice = [row.name, ...(row.alsoNamed ?? [])].flatMap((name) => {
      const key = name.toUpperCase().replace(/\s/g, '');
      const other = seen.get(key);
      seen.set(key, row.name);
      return other === undefined ? [] : [`Two channels are called ${name}.`];
    });
    const service = country.services.find(({ id }) => id === row.service);
    const never = service?.licence === 'never' && row.transmitHz !== undefined;
    const pair =
      row.repeaterInputHz !== undefined && (!service?.repeaters || row.repeaterInputHz === row.receiveHz);
    return [
      ...twice,
      ...(never ? [`${row.name} has a transmit frequency in a service that is only listened to.`] : []),
      ...(pair ? [`${row.name} has a repeater pair that its service cannot have.`] : []),
    ];
  });
}
