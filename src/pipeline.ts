/**
 * The whole flow: text, plan, what follows from it, findings, documents. Pure but for what it is handed:
 * the date, and a way to read the files a plan names.
 */
import type { Departure } from './checks/acceptance.ts';
import { runChecks } from './checks/run.ts';
import { type Consequences, consequencesOf } from './consequences/consequences.ts';
import type { Finding } from './findings/finding.ts';
import { compareFindings } from './findings/finding.ts';
import { lawOf } from './plan/law-of.ts';
import { type LoadedPlan, load } from './plan/load.ts';
import type { Plan } from './plan/model.ts';
import { planCheck } from './plan/plan-check.ts';
import type { Law } from './regulations/law.ts';

/** What a plan needs from outside. */
export interface World {
  /** ISO date on which the plan is looked at. */
  readonly today: string;
  /** Reads a file that the plan names, by its path from the plan's own folder. */
  read(path: string): Promise<Uint8Array>;
}

export interface Examined {
  readonly loaded: LoadedPlan;
  readonly findings: readonly Finding[];
  /** Absent when the plan could not be read as one. */
  readonly whole?: {
    readonly plan: Plan;
    readonly law: Law;
    readonly consequences: Consequences;
    readonly departures: readonly Departure[];
    readonly check: string;
  };
}

/** @param file the plan's name as findings show it */
export async function examine(content: string, file: string, world: World): Promise<Examined> {
  const loaded = load(content, file);
  const { plan } = loaded;
  if (!plan) return { loaded, findings: loaded.findings.toSorted(compareFindings) };

  const { law, findings } = await lawOf(plan, loaded, world);
  if (!law) return { loaded, findings };

  const consequences = consequencesOf(plan, law);
  const sifted = runChecks({ plan, law, consequences, today: world.today }, loaded.placeOf);
  return {
    loaded,
    findings: sifted.findings,
    whole: { plan, law, consequences, departures: sifted.departures, check: planCheck(plan) },
  };
}
