import { channelsOfPair, channelsSentOn } from './channels.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { holds } from './span.ts';

/**
 * The services a pair of frequencies belongs to, in the country's order; several may share one (GMRS and FRS).
 * Without a transmit frequency: those it is listened to in. A pair that no service has as such, but whose
 * transmit frequency is some channel's, belongs to the service of that channel.
 */
export function serviceOf(law: Law, receiveHz: number, transmitHz: number | undefined): readonly string[] {
  const sentHz = transmitHz ?? receiveHz;
  const { allocations, services } = law.country;
  const byPair = channelsOfPair(law, receiveHz, transmitHz).filter(
    (row) => transmitHz === undefined || row.transmitHz !== undefined,
  );
  const rows = byPair.length > 0 ? byPair : channelsSentOn(law, sentHz);
  const found = new Set([
    ...nearby(allocations, sentHz)
      .filter((row) => holds(row, sentHz))
      .map((row) => row.service),
    ...rows.map((row) => row.service),
  ]);
  return services.map((service) => service.id).filter((id) => found.has(id));
}
