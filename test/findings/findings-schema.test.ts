import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { type CheckedPlan, findingsJson } from '../../src/findings/findings-json.ts';
import { findingsSchema } from '../../src/findings/findings-schema.ts';
import { examine } from '../../src/pipeline.ts';
import { examplePlan } from '../checks/example-plan.ts';
import { exampleWorld } from '../checks/example-world.ts';

const accepts = new Ajv({ strict: true, strictTypes: false, allErrors: true }).compile(findingsSchema);

async function checked(text: string): Promise<CheckedPlan> {
  const { loaded, findings, whole } = await examine(text, 'plan.yaml', exampleWorld);
  const { file: plan } = loaded.text;
  const accepted = (whole?.departures ?? []).map(({ finding, acceptance: { because, until }, index }) => ({
    ...{ finding, because, until },
    acceptedAt: loaded.placeOf(['accepted', index]),
  }));
  return { plan, revision: whole?.plan.revision ?? null, check: whole?.check ?? null, findings, accepted };
}

const asPrinted = (plans: readonly CheckedPlan[]): unknown => JSON.parse(JSON.stringify(findingsJson(plans)));

/** Wrong in many ways at once: findings with and without a source, a section, a suggestion. */
const broken = examplePlan(`
repeaters:
  gap: { name: Gap repeater, output: 146.940, offset: 0.6, width: 25, place: nowhere }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 144.100, width: 25, tone: 101.0 }
  4: { name: SIMP, standard: GMRS 99 }`);

test('what is printed keeps to the published schema: a sound plan, a broken one, one that cannot be read, several', async () => {
  const plans = await Promise.all([examplePlan(''), broken, 'readback: 2\nplan: [', ''].map(checked));
  expect(plans.map(({ findings }) => findings.length > 0)).toEqual([false, true, true, true]);
  for (const printed of [...plans.map((plan) => asPrinted([plan])), asPrinted(plans), asPrinted([])])
    expect(accepts(printed), JSON.stringify(accepts.errors)).toBe(true);
});

const keeping = examplePlan(`
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: Coordinated so, until: 2027-06-01 }`);

test('so does what the group keeps, and a plan that could not be read at all', async () => {
  const kept = await checked(keeping);
  expect(kept.accepted).toHaveLength(1);
  const nothing = { plan: 'gone.yaml', revision: null, check: null, findings: [], accepted: [] };
  const printed = asPrinted([kept, { ...nothing, unread: 'There is no file gone.yaml.' }]) as {
    plans: [{ accepted: [object] }, object];
  };
  expect(accepts(printed), JSON.stringify(accepts.errors)).toBe(true);
  const [first, second] = printed.plans;
  const without = (change: object) => ({
    plans: [{ ...first, accepted: [{ ...first.accepted[0], ...change }] }, second],
  });
  expect(accepts(without({}))).toBe(true);
  expect(accepts(JSON.parse(JSON.stringify(without({ because: undefined }))))).toBe(false);
  expect(accepts(without({ until: 'soon' }))).toBe(false);
  expect(accepts({ ...first, unread: '' })).toBe(false);
});

test('the schema refuses what is not of that shape', async () => {
  const sound = asPrinted([await checked(broken)]) as { findings: object[] };
  const changed = (change: object) => ({ ...sound, findings: [{ ...sound.findings[0], ...change }] });
  expect(accepts(changed({}))).toBe(true);
  for (const change of [
    { severity: 'fatal' },
    { basis: 'taste' },
    { line: 0 },
    { rule: 'offset' },
    { message: '' },
    { source: { section: '97.205' } },
    { source: undefined },
  ])
    expect(accepts(JSON.parse(JSON.stringify(changed(change)))), JSON.stringify(change)).toBe(false);
  expect(accepts({ ...sound, check: 'lower' })).toBe(false);
  expect(accepts({ plans: [{}] })).toBe(false);
});
