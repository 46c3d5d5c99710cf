/** Whether stations on two channels meet: each receives where the other transmits. Undefined where either channel is not known. */
import type { Consequences } from './consequences.ts';

export function sameFrequencies(
  { channels }: Consequences,
  slot: number,
  otherSlot: number,
): boolean | undefined {
  const [a, b] = [channels.get(slot), channels.get(otherSlot)];
  if (!a || !b) return undefined;
  return slot === otherSlot || (a.receiveHz === b.receiveHz && a.transmitHz === b.transmitHz);
}
