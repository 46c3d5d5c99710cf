/** Everything found in an example, as `rule @path`, with what it would write instead. */
import type { Finding } from '../../src/findings/finding.ts';
import { examine } from '../../src/pipeline.ts';
import { examplePlan } from './example-plan.ts';

export async function findingsOf(piece: string): Promise<readonly Finding[]> {
  const read = (path: string) => Promise.reject(new Error(`an example asks for ${path}`));
  const { findings, whole } = await examine(examplePlan(piece), 'plan.yaml', { today: '2026-11-25', read });
  if (!whole) throw new Error(findings.map(({ message }) => message).join('\n'));
  return findings;
}
