/** A whole plan from an example's sections, with what follows from it; fails where it could not be read. */
import { type Consequences, consequencesOf } from '../../src/consequences/consequences.ts';
import { lawOf } from '../../src/plan/law-of.ts';
import { load } from '../../src/plan/load.ts';
import type { Plan } from '../../src/plan/model.ts';
import { examplePlan } from '../checks/example-plan.ts';

export async function example(piece: string): Promise<{ plan: Plan; consequences: Consequences }> {
  const loaded = load(examplePlan(piece), 'plan.yaml');
  const { plan } = loaded;
  if (!plan) throw new Error(loaded.findings.map(({ message }) => message).join('\n'));
  const { law } = await lawOf(plan, loaded, { read: async () => new Uint8Array() });
  if (!law) throw new Error('The plan names no rules.');
  return { plan, consequences: consequencesOf(plan, law) };
}
