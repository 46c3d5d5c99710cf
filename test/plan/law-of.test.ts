import { expect, test } from 'vitest';
import { lawOf } from '../../src/plan/law-of.ts';
import { load } from '../../src/plan/load.ts';
import { slip } from './slip.ts';

const world = { read: (path: string) => Promise.reject(new Error(`${path} is asked for`)) };

async function lawFor(rules: string) {
  const loaded = load(slip('rules: [us, rules/county.yaml]', `rules: ${rules}`), 'plan.yaml');
  if (loaded.plan === undefined) throw new Error('the plan cannot be read');
  return lawOf(loaded.plan, loaded, world);
}

test.each(['us', 'ca', 'gb', 'eu', 'au', 'nz'])('there are rules for %s', async (code) => {
  const { law, findings } = await lawFor(code);
  expect(findings).toEqual([]);
  expect(law?.country.code).toBe(code);
});

test('a country with no rules is pointed at, and the ones there are are named', async () => {
  const { law, findings } = await lawFor('no');
  expect(law).toBeUndefined();
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ rule: 'plan/unknown-rules', severity: 'error', place: { line: 11 } });
  expect(findings[0]?.message).toMatch(/^There are no rules for `no`; there are rules for .*\bus\b/);
});

test.each([
  ['uk', 'gb'],
  ['US', 'us'],
  ['New Zealand', 'nz'],
  ['no', undefined],
])(
  'for the rules of %s %s is proposed, and never a country that is only spelled alike',
  async (written, meant) => {
    const { findings } = await lawFor(written);
    expect(findings[0]?.suggestion).toBe(meant);
  },
);

test.each([
  ['[us, us]', '`us` stands twice under `rules`; once is enough.'],
  [
    '[us, ca]',
    '`ca` is a second country; a plan has the rules of one, and after it files of local coordination.',
  ],
  ['[us, county]', '`county` is not a rules file; their names end in .yaml.'],
])('after the country of %s come files of local coordination, each once', async (rules, message) => {
  const { law, findings } = await lawFor(rules);
  expect(law).toBeUndefined();
  expect(findings).toMatchObject([{ rule: 'plan/unknown-rules', message, path: ['plan', 'rules', 1] }]);
});
