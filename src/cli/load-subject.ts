/** A plan with what follows from it, for commands that need no checks: read, loaded, held against its country's rules. */
import { type Consequences, consequencesOf } from '../consequences/consequences.ts';
import { printFindings } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import { lawOf } from '../plan/law-of.ts';
import { type LoadedPlan, load } from '../plan/load.ts';
import type { Plan } from '../plan/model.ts';
import { planCheck } from '../plan/plan-check.ts';
import type { Law } from '../regulations/law.ts';
import { palette } from './palette.ts';
import { type PlanFile, readBeside, readPlanFile } from './read-plan-file.ts';
import { columnsOf, displayWidth, type TerminalOptions } from './terminal.ts';
import { today } from './today.ts';

export interface SubjectOptions extends TerminalOptions {
  /** What to call standard input. */
  readonly stdinFilename?: string;
  readonly today?: string;
}

export interface LoadedSubject {
  readonly file: PlanFile;
  readonly loaded: LoadedPlan;
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
  readonly check: string;
  /** ISO date on which it is looked at. */
  readonly today: string;
  /** Reads a file that the plan names. */
  read(path: string): Promise<Uint8Array>;
}

/** @throws {Refusal} for a plan with errors in its writing, after printing them to standard error */
export async function loadSubject(path: string, options: SubjectOptions): Promise<LoadedSubject> {
  const file = await readPlanFile(path, options.stdinFilename ?? 'standard input');
  const read = (beside: string) => readBeside(file.folder, beside);
  const date = today(options.today);
  const loaded = load(file.text, file.name);
  const { plan } = loaded;
  const outcome =
    plan === undefined
      ? { findings: loaded.findings, law: undefined, texts: [] }
      : await lawOf(plan, loaded, { read });
  if (plan === undefined || outcome.law === undefined) {
    const texts = new Map([loaded.text, ...outcome.texts].map((text) => [text.file, text]));
    process.stderr.write(
      printFindings(outcome.findings, {
        texts,
        width: columnsOf(process.stderr),
        widthOf: await displayWidth([file.text]),
        palette: palette(process.stderr, options),
      }),
    );
    throw new Refusal(
      `${file.name} could not be read as a plan.`,
      `Mend what stands above, then: readback check ${file.name}`,
    );
  }
  const { law } = outcome;
  const consequences = consequencesOf(plan, law);
  return { file, loaded, plan, law, consequences, check: planCheck(plan), today: date, read };
}
