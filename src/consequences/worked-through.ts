import type { Channel, Plan, Repeater } from '../plan/model.ts';

/** The repeater that a channel names, or those whose very pair it writes out. */
export function workedThrough(plan: Plan, channel: Channel): readonly Repeater[] {
  if (channel.kind === 'repeater') {
    const named = plan.repeaters.get(channel.repeater);
    return named ? [named] : [];
  }
  if (channel.kind !== 'split') return [];
  return [...plan.repeaters.values()].filter(
    ({ outputHz, inputHz }) => outputHz === channel.receiveHz && inputHz === channel.transmitHz,
  );
}
