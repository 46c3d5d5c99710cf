/**
 * Text to plan: parsed with positions, validated, held in typed form; or every error of the file at once.
 */
import type { Plan } from './model.ts';
import { type FileKind, type ReadFile, readAs } from './read-as.ts';
import { planSchema } from './schema.ts';
import { toPlan } from './to-plan.ts';

export interface LoadedPlan extends Omit<ReadFile<unknown>, 'read'> {
  /** Absent when the text has errors. */
  readonly plan?: Plan;
}

const planFile: FileKind = {
  noun: 'plan',
  begins: '`readback: 1`',
  other: {
    key: 'readback-rules',
    sentence: 'This is a rules file; name it under `plan.rules` of a plan, and check the plan.',
  },
};

/** @param file the file's name as findings show it */
export function load(content: string, file: string): LoadedPlan {
  const { read, ...rest } = readAs(content, file, planSchema, planFile);
  return read === undefined ? rest : { plan: toPlan(read), ...rest };
}
