/** A trial written into a plan's text, and nothing else changed: neither in the text nor in what it means. */
import { appendEntry, type Insertion, inserted } from './append-entry.ts';
import { load } from './load.ts';
import type { Plan, Trial } from './model.ts';

/** Undefined where the plan is so written that no trial can be added without disturbing it. */
export function addTrial(text: string, trial: Trial): Insertion | undefined {
  const before = load(text, '').plan;
  const insertion = appendEntry(text, 'trials', {
    value: {
      entries: [
        ['date', trial.date],
        ['from', trial.from],
        ['to', trial.to],
        ['channel', trial.channel === undefined ? undefined : { figure: String(trial.channel) }],
        ['radio', trial.radio],
        ['member', trial.member],
        ['heard', trial.heard],
        ['report', trial.report],
      ],
    },
  });
  const after = insertion && load(inserted(text, insertion), '').plan;
  if (insertion === undefined || before === undefined || after === undefined) return undefined;
  const wanted = meaning({ ...before, trials: [...before.trials, trial] });
  return meaning(after) === wanted ? insertion : undefined;
}

/** Two plans that mean the same give the same text. */
export function meaning(plan: Plan): string {
  return JSON.stringify(plan, (_key, value: unknown) => {
    if (value instanceof Map) return [...value];
    // Keys in one order: a trial may be written in another.
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : value;
  });
}
