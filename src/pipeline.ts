/**
 * The whole flow: text, plan, what follows from it, findings, documents. Pure but for what it is handed:
 * the date, and a way to read the files a plan names.
 */
import type { Departure } from './checks/acceptance.ts';
import type { HeldRevision } from './checks/rule.ts';
import { runChecks } from './checks/run.ts';
import { type Consequences, consequencesOf } from './consequences/consequences.ts';
import type { RadioPath } from './consequences/paths.ts';
import type { Finding } from './findings/finding.ts';
import { compareFindings } from './findings/finding.ts';
import type { SourceText } from './findings/source-text.ts';
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
  /** Whether to predict the radio paths as well, which takes the elevation files. */
  readonly withPaths?: boolean;
}

export interface Examined {
  readonly loaded: LoadedPlan;
  /** The plan and the rules files it names, for showing where a finding lies. */
  readonly texts: readonly SourceText[];
  readonly findings: readonly Finding[];
  /** Absent when the plan could not be read as one. */
  readonly whole?: {
    readonly plan: Plan;
    readonly law: Law;
    readonly consequences: Consequences;
    readonly departures: readonly Departure[];
    readonly check: string;
    /** Absent unless asked for and the plan has ground for them. */
    readonly paths?: readonly RadioPath[];
  };
}

/** @param file the plan's name as findings show it */
export async function examine(content: string, file: string, world: World): Promise<Examined> {
  const loaded = load(content, file);
  const { plan } = loaded;
  if (!plan) return { loaded, texts: [loaded.text], findings: loaded.findings.toSorted(compareFindings) };

  const { law, ...reading } = await lawOf(plan, loaded, world);
  const texts = [loaded.text, ...reading.texts];
  if (!law) return { loaded, texts, findings: reading.findings.toSorted(compareFindings) };

  const consequences = consequencesOf(plan, law);
  const paths = world.withPaths ? await predictedPaths(plan, consequences, world) : undefined;
  const check = planCheck(plan);
  const held = await heldRevisions(plan, check, world);
  const sifted = runChecks(
    { plan, law, consequences, held, today: world.today, ...(paths && { paths }) },
    loaded.placeOf,
  );
  return {
    loaded,
    texts,
    findings: sifted.findings,
    whole: {
      plan,
      law,
      consequences,
      departures: sifted.departures,
      check,
      ...(paths && { paths }),
    },
  };
}

/** Empty where the plan names no record, or none was begun yet. */
async function heldRevisions(plan: Plan, check: string, world: World): Promise<readonly HeldRevision[]> {
  if (plan.record === undefined) return [];
  const bytes = await world.read(plan.record).catch(() => undefined);
  if (bytes === undefined) return [];
  const { holdings, readAuditRecord } = await import('./audit/audit-record.ts');
  return holdings(readAuditRecord(new TextDecoder().decode(bytes), plan.record), check);
}

async function predictedPaths(
  plan: Plan,
  consequences: Consequences,
  world: World,
): Promise<readonly RadioPath[] | undefined> {
  if (plan.terrain.files.length === 0 && plan.terrain.profiles.length === 0) return undefined;
  const { loadGround } = await import('./consequences/load-ground.ts');
  const { pathsOf } = await import('./consequences/paths.ts');
  return pathsOf(plan, consequences, await loadGround(plan, (path) => world.read(path)));
}
