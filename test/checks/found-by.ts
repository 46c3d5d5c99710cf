/** Messages of one rule on an example, each after the path it points at. */
import { examine } from '../../src/pipeline.ts';
import { examplePlan } from './example-plan.ts';

export async function foundBy(rule: string, piece: string, today = '2026-11-25'): Promise<readonly string[]> {
  const read = (path: string) => Promise.reject(new Error(`an example asks for ${path}`));
  const { findings, whole } = await examine(examplePlan(piece), 'plan.yaml', { today, read });
  if (!whole) throw new Error(findings.map(({ message }) => message).join('\n'));
  return findings
    .filter((finding) => finding.rule === rule)
    .map(({ path, message }) => `${path.join('.')}: ${message}`);
}
