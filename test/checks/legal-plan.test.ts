import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { examine } from '../../src/pipeline.ts';
import { countries, countryByCode } from '../../src/regulations/countries.ts';
import type { Country } from '../../src/regulations/country.ts';
import { exampleWorld } from './example-world.ts';
import { legalPlan, planText, type WrittenPlan } from './legal-plan.ts';
import { mutations } from './mutations.ts';

const all = await Promise.all(
  countries.map(async ({ code }): Promise<Country> => {
    const country = await countryByCode(code);
    if (!country) throw new Error(`no rules for ${code}`);
    return country;
  }),
);

async function found(plan: WrittenPlan): Promise<readonly { severity: string; said: string }[]> {
  const { findings } = await examine(planText(plan), 'plan.yaml', exampleWorld);
  return findings.map(({ rule, severity, path, message }) => ({
    severity,
    said: `${rule} ${path.join('.')}: ${message}`,
  }));
}

describe.each(all.map((country) => [country.name, country] as const))('%s', (_, country) => {
  test('a plan made from the tables of the country alone has no errors', async () => {
    await fc.assert(
      fc.asyncProperty(legalPlan(country), async (plan) => {
        const findings = await found(plan);
        expect(findings.filter(({ severity }) => severity === 'error').map(({ said }) => said)).toEqual([]);
        expect(Object.keys(plan.channels)).not.toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});

describe('a single slip in a legal plan is found:', () => {
  // Fixed, so that a share does not change from run to run.
  const plans = all.flatMap((country) => fc.sample(legalPlan(country), { seed: 2026, numRuns: 6 }));
  const soundFindings = Promise.all(
    plans.map(async (plan) => new Set((await found(plan)).map(({ said }) => said))),
  );

  test.each(mutations)('$kind', async ({ kind, floor, mutate }) => {
    let slips = 0;
    const missed: string[] = [];
    for (const [k, plan] of plans.entries()) {
      const changed = structuredClone(plan);
      if (!mutate(changed, k * 7 + 3)) continue;
      slips += 1;
      const before = (await soundFindings)[k];
      const after = await found(changed);
      if (after.every(({ said }) => before?.has(said))) missed.push(`${plan.rules}: ${planText(changed)}`);
    }
    expect(slips).toBeGreaterThan(4);
    const share = 1 - missed.length / slips;
    expect(
      share,
      `${kind}: ${share.toFixed(2)} of ${slips}; missed\n${missed.join('\n')}`,
    ).toBeGreaterThanOrEqual(floor);
  });
});
