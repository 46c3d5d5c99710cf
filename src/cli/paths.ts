/** `readback paths`: each radio path of a plan, predicted, with what was really heard beside it. */
import { loadGround } from '../consequences/load-ground.ts';
import { pathsOf } from '../consequences/paths.ts';
import { type TrialErrors, trialErrors } from '../consequences/trial-errors.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { pathJson } from './path-json.ts';
import { pathsMissing } from './paths-missing.ts';
import { pathsText } from './paths-text.ts';
import { pathsTrialsText } from './paths-trials-text.ts';

export interface PathsOptions {
  readonly from?: string;
  readonly to?: string;
  readonly json?: true;
  readonly trials?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function paths(file: string, options: PathsOptions): Promise<ExitStatus> {
  const { plan, consequences, read } = await loadSubject(file, options);
  const ground = await loadGround(plan, read);
  if (options.trials) {
    const errors = trialErrors(plan, consequences, ground);
    if (errors.beside.length === 0)
      throw new Refusal(
        'No trial of this plan can be held against a prediction.',
        '`readback log` adds one.',
      );
    process.stdout.write(
      options.json
        ? `${JSON.stringify(trialsJson(file, plan, errors), null, 2)}\n`
        : await pathsTrialsText(
            plan,
            errors,
            pathsMissing(
              plan,
              errors.beside.map(({ path }) => path),
              ground.terrain,
            ),
            options,
          ),
    );
    return 0;
  }
  const all = pathsOf(plan, consequences, ground);
  const found = all.filter(({ from, to }) => matches(from, options.from) && matches(to, options.to));
  if (found.length === 0) {
    throw new Refusal(
      all.length === 0 ? 'No path follows from this plan.' : 'No path of this plan is between those.',
      all.length === 0 ? 'Members need places, and stations too.' : '`readback paths PLAN` lists them all.',
    );
  }
  process.stdout.write(
    options.json
      ? `${JSON.stringify({ plan: file, revision: plan.revision, paths: found.map(pathJson) }, null, 2)}\n`
      : await pathsText(plan, found, pathsMissing(plan, found, ground.terrain), options),
  );
  return 0;
}

function matches(end: PathEnd, wanted: string | undefined): boolean {
  return (
    wanted === undefined ||
    end.place === wanted ||
    (end.kind === 'member' ? end.radio === wanted : end.id === wanted)
  );
}

function trialsJson(file: string, plan: Plan, { beside, radios, withoutPrediction }: TrialErrors): object {
  return {
    plan: file,
    revision: plan.revision,
    trials: beside.map(({ trial, index, radio, path }) => ({
      index,
      date: trial.date,
      radio,
      heard: trial.heard,
      predicted: pathJson(path),
    })),
    radios: radios.map(({ radio, fit }) => ({ radio, ...fit })),
    withoutPrediction,
  };
}
