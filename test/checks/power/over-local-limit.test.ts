import { expect, test } from 'vitest';
import { examine } from '../../../src/pipeline.ts';
import { examplePlan } from '../example-plan.ts';
import { exampleWorld } from '../example-world.ts';

const head =
  'plan: { title: Example, revision: 1, effective: 2026-12-01, review-by: 2027-12-01, timezone: America/New_York, rules: [us, local/our-coordinator.yaml], coordinator: ada }\n';

async function about(piece: string): Promise<readonly string[]> {
  const { findings } = await examine(examplePlan(head + piece), 'plan.yaml', exampleWorld);
  return findings
    .filter(({ rule }) => rule.startsWith('power/') || rule === 'frequency/closed-locally')
    .map(({ rule, basis, message }) => `${rule} (${basis}): ${message}`);
}

test('what a coordinator limits is no law, and the coordinator is named', async () => {
  expect(await about('channels:\n  3: { name: SIMP, simplex: 446.500, width: 25, power: 5 W }\n')).toEqual([
    'power/over-local-limit (band plan): Power is 5 W; the rules of Coordinator of the valley allow 2 W at 446.500 MHz.',
  ]);
});

test('a signal beside a closed segment is said to reach into it', async () => {
  expect(await about('channels:\n  3: { name: SIMP, simplex: 146.445, width: 25 }\n')).toEqual([
    'frequency/closed-locally (band plan): Closed by Coordinator of the valley: the signal at 146.445 MHz reaches into 146.400-146.440 MHz: kept for the link of the fire lookout.',
  ]);
});
