import { expect, test } from 'vitest';
import { examine, type World } from '../../src/pipeline.ts';
import { examplePlan } from './example-plan.ts';
import { exampleWorld } from './example-world.ts';

const odd = `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: Coordinated so, until: 2027-06-01 }
`;

async function found(piece: string, world: World = exampleWorld) {
  const { findings, whole } = await examine(examplePlan(piece), 'plan.yaml', world);
  return {
    rules: findings.map(({ rule }) => rule),
    departures: whole?.departures.map(({ finding }) => finding.rule),
  };
}

test('an accepted finding is a departure and no finding, until its last day', async () => {
  expect(await found(odd)).toEqual({ rules: [], departures: ['offset/unusual'] });
  const late = { ...exampleWorld, today: '2027-06-02' };
  const { rules, departures } = await found(odd, late);
  expect(departures).toEqual([]);
  expect(rules).toEqual(expect.arrayContaining(['offset/unusual', 'accepted/out-of-date']));
});

test('an acceptance covers what lies below its path, and nothing beside it', async () => {
  const { rules } = await found(odd.replace('at: repeaters.gap', 'at: repeaters.ga'));
  expect(rules).toEqual(expect.arrayContaining(['offset/unusual', 'accepted/matches-nothing']));
});

test('an error of law stays, whatever is accepted', async () => {
  const { rules, departures } = await found(`
channels:
  1: { name: GAP, repeater: gap }
  3: { name: FAR, simplex: 149.550, width: 25 }
accepted:
  - { rule: frequency/outside-allocation, at: channels.3, because: We want it, until: 2027-06-01 }
`);
  expect(departures).toEqual([]);
  expect(rules).toEqual(expect.arrayContaining(['frequency/outside-allocation', 'accepted/law']));
});

test('where paths are not predicted, what was accepted about them is not said to match nothing', async () => {
  const about = `
accepted:
  - { rule: path/rung-doubtful, at: fallbacks.first.rungs.1, because: Tried on foot, until: 2027-06-01 }
`;
  expect((await found(about, { ...exampleWorld, withPaths: false })).rules).toEqual([]);
  expect((await found(`${about}terrain: { files: [hickory-gap.tif] }`)).rules).toContain(
    'accepted/matches-nothing',
  );
});
