import { channelsSentOn } from './channels.ts';
import type { EmissionKind, Modulation, WidthRow } from './country.ts';
import { type Law, serviceById } from './law.ts';
import { nearby } from './nearby.ts';
import { holds } from './span.ts';

export interface WidthQuestion {
  readonly service: string;
  readonly frequencyHz: number;
  readonly kind: EmissionKind;
  /** Left open, the strictest row that may hold answers. */
  readonly modulation?: Modulation;
}

/** The least of the widths that hold for a signal, a published channel's own width among them; undefined where none is set. */
export function widthLimit(law: Law, asked: WidthQuestion): WidthRow | undefined {
  const { service, frequencyHz, kind, modulation } = asked;
  const ofSegments = nearby(law.country.widths, frequencyHz).filter(
    (row) =>
      row.service === service &&
      holds(row, frequencyHz) &&
      (row.kinds?.includes(kind) ?? true) &&
      (modulation === undefined || (row.modulations?.includes(modulation) ?? true)),
  );
  // Where stations may leave the published channels, a channel's width is the band plan's and no limit.
  const channels = serviceById(law, service)?.channelsOnly ? channelsSentOn(law, frequencyHz) : [];
  const ofChannels = channels
    .filter((row) => row.service === service)
    .map(
      (row): WidthRow => ({
        service,
        fromHz: frequencyHz,
        toHz: frequencyHz,
        maxWidthHz: row.maxWidthHz,
        source: row.source,
        ...(row.fromMemory && { fromMemory: row.fromMemory }),
      }),
    );
  // Two channel rows on one frequency (a pair and its input's own row) are two ways to the same use: the wider holds.
  const widest = ofChannels.toSorted((a, b) => b.maxWidthHz - a.maxWidthHz).slice(0, 1);
  return [...ofSegments, ...widest].toSorted((a, b) => a.maxWidthHz - b.maxWidthHz)[0];
}
