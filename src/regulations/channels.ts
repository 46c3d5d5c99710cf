import { editDistance } from '../findings/nearest.ts';
import type { ChannelRow, Country } from './country.ts';
import type { Law } from './law.ts';

export type ChannelSearch =
  | { readonly found: true; readonly channel: ChannelRow }
  /** Names of published channels that come nearest, best first; never empty unless the country has no channels. */
  | { readonly found: false; readonly nearest: readonly string[] };

/**
 * A published channel by its name, whatever the case and spacing: `GMRS 20`, `gmrs20`, `Gmrs-020`. Where zeros
 * tell two names apart (`RU002` and the former `RU2`), the one written so is meant.
 */
export function channelByName(law: Law, name: string): ChannelSearch {
  // No channel's name is as long, and the work of comparing grows with the length.
  const written = plainName(name.slice(0, 64));
  const wanted = withoutZeros(written);
  const { channels } = law.country;
  const channel =
    channels.find((row) => names(row).some((own) => plainName(own) === written)) ??
    channels.find((row) => names(row).some((own) => withoutZeros(plainName(own)) === wanted));
  if (channel) return { found: true, channel };
  const ranked = law.country.channels
    .map((row) => ({ name: row.name, distance: distance(name.slice(0, 64), row.name) }))
    .toSorted((a, b) => a.distance - b.distance);
  return { found: false, nearest: ranked.slice(0, 3).map((row) => row.name) };
}

/** Published channels on which a set transmits or receives this frequency; where services share one, all of them. */
export function channelsAtFrequency(law: Law, frequencyHz: number, service?: string): readonly ChannelRow[] {
  return law.country.channels.filter(
    (row) =>
      (service === undefined || row.service === service) &&
      (row.receiveHz === frequencyHz || row.transmitHz === frequencyHz),
  );
}

/** Published channels with this pair: what is heard, and what is sent (directly, or to a repeater's input). */
export function channelsOfPair(
  law: Law,
  receiveHz: number,
  transmitHz: number | undefined,
): readonly ChannelRow[] {
  return (heardOn(law.country).get(receiveHz) ?? []).filter(
    (row) => transmitHz === undefined || row.transmitHz === transmitHz || row.repeaterInputHz === transmitHz,
  );
}

/** Published channels on which somebody sends on this frequency: directly, or to a repeater's input. */
export function channelsSentOn(law: Law, frequencyHz: number): readonly ChannelRow[] {
  return sentOn(law.country).get(frequencyHz) ?? [];
}

type ByFrequency = ReadonlyMap<number, readonly ChannelRow[]>;

const heardOn = byFrequency((row) => [row.receiveHz]);
const sentOn = byFrequency((row) => [row.transmitHz, row.repeaterInputHz]);

/** Indexes the channels of a country when first asked; each list is in the order of the table. */
function byFrequency(
  frequenciesOf: (row: ChannelRow) => readonly (number | undefined)[],
): (country: Country) => ByFrequency {
  const indexes = new WeakMap<Country, ByFrequency>();
  return (country) => {
    const known = indexes.get(country);
    if (known) return known;
    const index = new Map<number, ChannelRow[]>();
    for (const row of country.channels) {
      for (const frequencyHz of new Set(frequenciesOf(row))) {
        if (frequencyHz === undefined) continue;
        const here = index.get(frequencyHz);
        if (here) here.push(row);
        else index.set(frequencyHz, [row]);
      }
    }
    indexes.set(country, index);
    return index;
  };
}

function names(row: ChannelRow): readonly string[] {
  return [row.name, ...(row.alsoNamed ?? [])];
}

/** A name as it is looked up: without regard to case, spaces and hyphens. */
export function plainName(name: string): string {
  return name.toUpperCase().replace(/[\s_-]+/g, '');
}

function withoutZeros(name: string): string {
  return name.replace(/(?<=[A-Z])0+(?=\d)/g, '');
}

interface Parts {
  readonly letters: string;
  readonly number: number;
}

/** Letters weigh more than numbers: `GMRS 31` is nearer to `GMRS 30` than to `FRS 3`, `GMSR 20` nearest to `GMRS 20`. */
function distance(a: string, b: string): number {
  const [p, q] = [parts(a), parts(b)];
  const numbers = Math.abs(p.number - q.number);
  return 100 * editDistance(p.letters, q.letters) + (Number.isNaN(numbers) ? 0 : Math.min(numbers, 99));
}

/** The number is what stands last: 11 of `CB26 11`, whose band is part of the name. */
function parts(name: string): Parts {
  const number = /\d+(?=\D*$)/.exec(name)?.[0];
  return {
    letters: plainName(name).replace(/\d/g, ''),
    number: number === undefined ? Number.NaN : Number.parseInt(number, 10),
  };
}
