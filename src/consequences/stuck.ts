/**
 * Radios that reach a channel in every respect but one that its keeper would have to set: the tone, the
 * width, the tuning step. Named with the members for whom no other radio will do.
 */

import type { Radio } from '../plan/model.ts';
import type { ChannelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import { memberKinds } from './member-kinds.ts';
import type { PlanInLaw } from './plan-in-law.ts';
import { refusedSlots } from './planned-signals.ts';
import { type Misfit, type MisfitCode, radioFit } from './radio-fit.ts';

export interface Stuck {
  readonly on: ChannelParticulars;
  readonly radio: Radio;
  readonly misfits: readonly Misfit[];
  readonly holders: readonly string[];
}

const settable: readonly MisfitCode[] = ['tone', 'width', 'transmit-step', 'receive-step'];

const known = new WeakMap<Consequences, readonly Stuck[]>();

export function stuck(context: PlanInLaw): readonly Stuck[] {
  const found = known.get(context.consequences);
  if (found) return found;
  const all = [...find(context)];
  known.set(context.consequences, all);
  return all;
}

/** Those with a misfit of a kind, one list a channel. */
export function stuckBy(
  context: PlanInLaw,
  codes: readonly MisfitCode[],
): ReadonlyMap<number, readonly [Stuck, ...Stuck[]]> {
  const channels = new Map<number, [Stuck, ...Stuck[]]>();
  for (const one of stuck(context)) {
    if (!one.misfits.some(({ code }) => codes.includes(code))) continue;
    const here = channels.get(one.on.slot);
    if (here) here.push(one);
    else channels.set(one.on.slot, [one]);
  }
  return channels;
}

function* find(context: PlanInLaw): Generator<Stuck> {
  const { plan, law, consequences } = context;
  const refused = refusedSlots(context);
  const kinds = memberKinds({ plan, law });
  for (const radio of plan.radios.values()) {
    const holding = kinds.filter(([{ radios }]) => radios.includes(radio.id));
    if (holding.length === 0) continue;
    for (const on of consequences.channels.values()) {
      const { misfits } = radioFit(radio, on);
      if (misfits.length === 0 || !misfits.every(({ code }) => settable.includes(code))) continue;
      if (refused.has(on.slot)) continue;
      const holders = holding.flatMap((kind) => {
        const [{ id }] = kind;
        const may = consequences.best(id, on.slot)?.may;
        if (may === 'transmit' || (on.transmitHz === undefined && may === 'listen only')) return [];
        const reasons = consequences.use(id, radio.id, on.slot)?.reasons ?? [];
        const onlyThat = reasons.every(({ code }) => settable.some((each) => each === code));
        return onlyThat ? kind.map(({ name }) => name) : [];
      });
      if (holders.length > 0) yield { on, radio, misfits, holders };
    }
  }
}
