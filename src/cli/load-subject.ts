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

export interface LoadedSubject {
  readonly file: PlanFile;
  readonly loaded: LoadedPlan;
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
  readonly check: string;
}

/** @throws {Refusal} for a plan with errors in its writing, after printing them to standard error */
export async function loadSubject(path: string, options: TerminalOptions): Promise<LoadedSubject> {
  const file = await readPlanFile(path, 'standard input');
  const loaded = load(file.text, file.name);
  const { plan } = loaded;
  const outcome =
    plan === undefined
      ? { findings: loaded.findings, law: undefined, texts: [] }
      : await lawOf(plan, loaded, { read: (beside) => readBeside(file.folder, beside) });
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
  return { file, loaded, plan, law, consequences: consequencesOf(plan, law), check: planCheck(plan) };
}
