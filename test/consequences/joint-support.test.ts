import { expect, test } from 'vitest';
import { foundBy } from '../checks/found-by.ts';

const plan = (rungs: readonly string[], highPlace = 'base', highNeeds = '') => `
assets:
  feeder: { name: Valley feeder }
  hut: { name: Hut supply, depends-on: [feeder] }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W, depends-on: [feeder] }
  high: { name: High repeater, call: W4XHI, output: 444.325, offset: 5, tone: 100.0, width: 25, place: ${highPlace}, power: 25 W${highNeeds} }
channels:
  1: { name: GAP, repeater: gap }
  2: { name: HIGH, repeater: high }
  3: { name: SIMP, simplex: 146.550, width: 25, use: Work }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
${rungs.map((rung) => `      - ${rung}`).join('\n')}
      - { grade: emergency, meet: base, at: next full hour }`;

const [gap, high, simplex] = [1, 2, 3].map(
  (slot) => `{ grade: ${slot === 1 ? 'primary' : 'alternate'}, channel: ${slot}, within: 5 min }`,
) as [string, string, string];
const needs = (what: string) => [`fallbacks.first: Every radio rung of First needs ${what}.`];

test('two repeaters on one hill fail with the hill', async () => {
  expect(await foundBy('ladder/hangs-on-one', plan([gap, high], 'hill'))).toEqual(needs('Hill'));
});

test('two repeaters apart fail with the feeder of both, however far down it lies', async () => {
  expect(await foundBy('ladder/hangs-on-one', plan([gap, high]))).toEqual([]);
  expect(await foundBy('ladder/hangs-on-one', plan([gap, high], 'base', ', depends-on: [hut]'))).toEqual(
    needs('Valley feeder'),
  );
});

test('a simplex rung needs none of them', async () => {
  expect(
    await foundBy('ladder/hangs-on-one', plan([gap, high, simplex], 'hill', ', depends-on: [feeder]')),
  ).toEqual([]);
});

test('a ladder of one radio channel is short, and has no second choice to fail with it', async () => {
  expect(await foundBy('ladder/hangs-on-one', plan([gap]))).toEqual([]);
});
