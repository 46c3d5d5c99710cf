/** Every tone a plan writes, where it is written and the frequency it rides on. */

import type { PlanPath } from '../findings/finding.ts';
import type { Plan } from '../plan/model.ts';
import type { Tone } from '../radio/tone.ts';
import type { Consequences } from './consequences.ts';

export interface WrittenTone {
  readonly at: PlanPath;
  readonly tone: Tone;
  /** Whose it is: `Gap repeater`, `SIMP 1`. */
  readonly name: string;
  /** Absent where the channel's figures cannot be found. */
  readonly frequencyHz?: number;
}

const known = new WeakMap<Consequences, readonly WrittenTone[]>();

export function writtenTones(plan: Plan, consequences: Consequences): readonly WrittenTone[] {
  const found = known.get(consequences) ?? [...tonesOf(plan, consequences)];
  known.set(consequences, found);
  return found;
}

function* tonesOf(plan: Plan, consequences: Consequences): Generator<WrittenTone> {
  for (const { id, name, tone, outputTone, inputHz, outputHz } of plan.repeaters.values()) {
    if (tone) yield { at: ['repeaters', id, 'tone'], tone, name, frequencyHz: inputHz };
    if (outputTone)
      yield { at: ['repeaters', id, 'output-tone'], tone: outputTone, name, frequencyHz: outputHz };
  }
  for (const { slot, name, tone, receiveTone } of plan.channels.values()) {
    if (!tone && !receiveTone) continue;
    const on = consequences.channels.get(slot);
    const sent = on?.transmitHz !== undefined && { frequencyHz: on.transmitHz };
    const heard = on && { frequencyHz: on.receiveHz };
    if (tone) yield { at: ['channels', slot, 'tone'], tone, name, ...sent };
    if (receiveTone) yield { at: ['channels', slot, 'receive-tone'], tone: receiveTone, name, ...heard };
  }
}
