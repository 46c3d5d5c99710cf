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

const accepting = (...entries: readonly string[]) =>
  odd.replace(
    /accepted:.*/s,
    `accepted:\n${entries.map((entry) => `  - { rule: offset/unusual, ${entry} }\n`).join('')}`,
  );

async function saidOfAcceptances(piece: string) {
  const { findings, whole } = await examine(examplePlan(piece), 'plan.yaml', exampleWorld);
  return {
    said: findings.map(({ rule, path, message }) => [rule, path.join('.'), message]),
    reasons: whole?.departures.map(({ acceptance }) => acceptance.because),
  };
}

test('of two acceptances of one finding the narrower holds, or the first, and the other is said to stand twice', async () => {
  const [first, second] = [
    'at: repeaters.gap, because: One, until: 2027-06-01',
    'at: repeaters.gap, because: Two, until: 2027-03-01',
  ];
  expect(await saidOfAcceptances(accepting(first, second))).toEqual({
    said: [
      [
        'accepted/stands-twice',
        'accepted.1',
        '`offset/unusual` at `repeaters.gap` stands twice; another entry accepts it until 2027-06-01.',
      ],
    ],
    reasons: ['One'],
  });
  const wide = 'at: repeaters, because: Wide, until: 2028-01-01';
  expect(await saidOfAcceptances(accepting(wide, first))).toEqual({
    said: [
      [
        'accepted/stands-twice',
        'accepted.0',
        'What `offset/unusual` finds at `repeaters` is accepted already at `repeaters.gap`, until 2027-06-01.',
      ],
    ],
    reasons: ['One'],
  });
});

test('an acceptance that still holds is not hidden by one that ran out', async () => {
  const { said, reasons } = await saidOfAcceptances(
    accepting(
      'at: repeaters.gap, because: Old, until: 2026-01-01',
      'at: repeaters.gap, because: New, until: 2027-06-01',
    ),
  );
  expect(reasons).toEqual(['New']);
  expect(said.map(([rule, path]) => [rule, path])).toEqual([['accepted/out-of-date', 'accepted.0.until']]);
});

test('an acceptance of a whole section is told what it accepts, and what it would', async () => {
  expect(await saidOfAcceptances(accepting('at: repeaters, because: Wide, until: 2027-06-01'))).toEqual({
    said: [
      [
        'accepted/whole-section',
        'accepted.0.at',
        '`repeaters` accepts `offset/unusual` for repeaters.gap, and for every entry that comes later as well.',
      ],
    ],
    reasons: ['Wide'],
  });
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
