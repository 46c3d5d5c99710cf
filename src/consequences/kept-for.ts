/** Amateur channels without a repeater, beside what the band plan keeps their frequency for. */

import { bandPlanAt } from '../regulations/band-plan.ts';
import type { BandPlanRow } from '../regulations/country.ts';
import type { Consequences } from './consequences.ts';
import type { PlanInLaw } from './plan-in-law.ts';
import { type PlannedSignal, plannedSignals } from './planned-signals.ts';

export interface KeptFor {
  readonly signal: PlannedSignal;
  readonly frequencyHz: number;
  /** The narrowest row there, and all of them. */
  readonly row: BandPlanRow;
  readonly rows: readonly BandPlanRow[];
}

const known = new WeakMap<Consequences, readonly KeptFor[]>();

/** Lawful ones only: what breaks the law is found as that. A published channel is where its publisher put it. */
export function keptFor(context: PlanInLaw): readonly KeptFor[] {
  const kept = known.get(context.consequences) ?? [...find(context)];
  known.set(context.consequences, kept);
  return kept;
}

function* find(context: PlanInLaw): Generator<KeptFor> {
  for (const signal of plannedSignals(context)) {
    const { part, answer, on, services, frequencyHz } = signal;
    if (part !== 'channel' || !answer.may || on.repeater || on.published) continue;
    if (!services.includes('amateur')) continue;
    const rows = bandPlanAt(context.law, frequencyHz);
    const [row] = rows;
    if (row) yield { signal, frequencyHz, row, rows };
  }
}
