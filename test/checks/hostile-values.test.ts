/** Whatever stands under a key of the language, a plan is met with findings that make sense, never with a fault. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Finding } from '../../src/findings/finding.ts';
import { Refusal } from '../../src/findings/refusal.ts';
import { examine } from '../../src/pipeline.ts';
import { everyKey } from '../plan/every-key.ts';

type Tree = string | number | boolean | null | readonly Tree[] | { readonly [key: string]: Tree } | Raw;

/** YAML to be put into a plan as it stands. */
class Raw {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** The plan with every key, without the files it names. */
const wholePlan = parse(
  everyKey.replace(/rules: \[us, .*\]/, 'rules: [us]').replace(/ {2}files: .*\n/, ''),
) as Tree;

/** Every entry, the lists and mappings that hold them as well. */
const paths = pathsBelow(wholePlan, []);

function pathsBelow(tree: Tree, path: readonly string[]): readonly (readonly string[])[] {
  if (typeof tree !== 'object' || tree === null || tree instanceof Raw) return [path];
  const below = Object.entries(tree).flatMap(([key, inner]) => pathsBelow(inner, [...path, key]));
  return path.length === 0 ? below : [path, ...below];
}

function changed(tree: Tree, [key, ...rest]: readonly string[], value: Raw): Tree {
  if (key === undefined) return value;
  // An earlier change may have put something else where this one leads.
  if (typeof tree !== 'object' || tree === null || tree instanceof Raw) return tree;
  if (Array.isArray(tree))
    return tree.map((item, k) => (String(k) === key ? changed(item, rest, value) : item));
  return { ...tree, [key]: changed((tree as { [key: string]: Tree })[key] ?? null, rest, value) };
}

function yaml(tree: Tree): string {
  if (tree instanceof Raw) return tree.text;
  if (Array.isArray(tree)) return `[${tree.map(yaml).join(', ')}]`;
  if (typeof tree !== 'object' || tree === null) return JSON.stringify(tree);
  return `{${Object.entries(tree)
    .map(([key, inner]) => `${JSON.stringify(key)}: ${yaml(inner)}`)
    .join(', ')}}`;
}

const world = {
  today: '2026-11-25',
  withPaths: true,
  read: (path: string) => Promise.reject(new Refusal(`There is no file ${path}.`)),
};

async function findingsWith(...changes: readonly (readonly [readonly string[], string])[]) {
  const text = yaml(changes.reduce((tree, [path, value]) => changed(tree, path, new Raw(value)), wholePlan));
  return { text, findings: (await examine(text, 'plan.yaml', world)).findings };
}

/** Words of a program about itself, where a person asked about a plan; what the plan holds is quoted. */
const slips = /\bNaN\b|Infinity|undefined|\[object|Invalid input|\be\+\d/;
const quoted = /`[^`]*`|"[^"]*"/g;

function senseless({ message, suggestion = '', place }: Finding, text: string): boolean {
  return (
    slips.test(message.replace(quoted, '')) ||
    slips.test(suggestion) ||
    place.line !== 1 ||
    place.endColumn > text.length + 1
  );
}

const values = {
  huge: [
    '9999999999999999',
    '-9999999999999999',
    '99999999999 GHz',
    '999999999999 d',
    '99999999 dBd',
    '[9999999999999999]',
  ],
  least: ['0', '-0', '-1', '0.000000000000000000000001', '1 Hz', '0.001 ms', '0 uV', '-99999999 dBi', '0-0'],
  'no number': ['.nan', '.inf', '-.inf', '1e400', '0x1F', 'nan', 'constructor', '__proto__'],
  empty: ['~', '""', '[]', '{}', '[[]]', '[~]', '{ ? : ~ }'],
  edge: [
    '99 kW',
    '100 dBi',
    '10 MHz',
    '300 GHz',
    '36525 d',
    '100 km',
    '1000 dB',
    '0.000001-300000',
    '9999',
    '99999',
  ],
  calendar: [
    '0000-01-01',
    '"00:00"',
    '"23:59Z"',
    'FREQ=YEARLY;INTERVAL=9999;COUNT=99999',
    'FREQ=DAILY;UNTIL=99991231',
  ],
  place: ['"90, 180"', '"-90, -180"', '"0, 0"', '"0, 0, 0"'],
} as const;

test('the plan itself is read, so that what is changed in it is looked at by the rules', async () => {
  const { findings } = await findingsWith();
  expect(findings.map(({ rule }) => rule).filter((rule) => rule.startsWith('plan/wrong'))).toEqual([]);
  expect(findings.length).toBeGreaterThan(10);
  expect(paths.length).toBeGreaterThan(300);
});

test.each(['9999999999999999', '[]', '~'])('%s under any key gives findings', async (value) => {
  for (const path of paths) {
    const { text, findings } = await findingsWith([path, value]);
    expect(
      findings.filter((finding) => senseless(finding, text)),
      path.join('.'),
    ).toEqual([]);
  }
});

test('any two such values under any two keys give findings', async () => {
  const change = fc.tuple(fc.constantFrom(...paths), fc.constantFrom(...Object.values(values).flat()));
  await fc.assert(
    fc.asyncProperty(change, change, async (one, other) => {
      const { text, findings } = await findingsWith(one, other);
      expect(findings.filter((finding) => senseless(finding, text))).toEqual([]);
    }),
    { numRuns: 400 },
  );
});

test.each([
  ['repeaters.gap.offset', '9999999999999', 'an offset in MHz, such as -0.6', undefined],
  ['repeaters.gap.offset', '-600000', 'an offset in MHz, such as -0.6', '-0.6 MHz'],
  ['radios.handheld.steps.0', '12500', 'a step in kHz', '12.5 kHz'],
  ['radios.handheld.widths.0', '9999999999999999', 'a spacing in kHz', undefined],
  ['channels.3.width', '25000', 'a spacing in kHz, such as 25', '25 kHz'],
  ['radios.handheld.receives.0', '9999999999999999', 'a range in MHz, such as 144-148', undefined],
  ['repeaters.gap.antenna.gain', '9999999 dBd', 'a gain, such as -5 dBd or 2.15 dBi', undefined],
  ['channels.3.simplex', '146550000', 'a frequency in MHz, such as 146.940', '146.550'],
])('%s: %s is beyond anything met, and says so at its place', async (path, value, expected, suggestion) => {
  const { text, findings } = await findingsWith([path.split('.'), value]);
  const [finding, ...others] = findings;
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    rule: 'plan/wrong-value',
    message: `Expected ${expected}; \`${value}\` is beyond anything met.`,
    path: path
      .split('.')
      .map((step) => (/^\d$/.test(step) && !path.startsWith('channels') ? Number(step) : step)),
  });
  expect(finding?.suggestion).toBe(suggestion);
  expect(text.slice((finding?.place.column ?? 0) - 1, (finding?.place.endColumn ?? 0) - 1)).toBe(value);
});

test('a plan whose rules are an empty list is told to name a country', async () => {
  const { findings } = await findingsWith([['plan', 'rules'], '[]']);
  expect(findings).toMatchObject([
    {
      rule: 'plan/wrong-value',
      message: expect.stringMatching(/begins with the country/),
      path: ['plan', 'rules'],
    },
  ]);
});

test.each(['0', '0.001 ms', '59 s'])('a watch cannot begin anew every %s', async (value) => {
  const { findings } = await findingsWith([['check-ins', 'watch', 'repeats'], value]);
  expect(findings).toMatchObject([
    {
      rule: 'plan/wrong-value',
      message: '`repeats` is a minute at least, for starts are told by the minute.',
      path: ['check-ins', 'watch', 'repeats'],
    },
  ]);
});
