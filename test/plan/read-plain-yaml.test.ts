import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPlainYaml } from '../../src/plan/read-plain-yaml.ts';
import { readWholeYaml } from '../../src/plan/read-yaml.ts';
import { starterPlan } from '../../src/plan/starter-plan.ts';
import { examplePlan } from '../checks/example-plan.ts';
import { largePlan } from '../house/large-plan.ts';
import { everyKey } from './every-key.ts';

const folder = new URL('../../plans/', import.meta.url);
const demos = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));
const texts = [...demos, everyKey, examplePlan(''), largePlan(20)];

function pathsOf(value: unknown): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const step = Array.isArray(value) ? Number(key) : key;
    return [[step], [step, 'none'], ...pathsOf(inner).map((path) => [step, ...path])];
  });
}

/** The oracle is the yaml library, which knows the whole of YAML 1.2. Says whether the text was plain. */
function readsAlike(text: string): boolean {
  const ours = readPlainYaml(text);
  if (ours === undefined) return false;
  const whole = readWholeYaml(text);
  expect(whole.problems, text).toEqual([]);
  expect(ours.root, text).toEqual(whole.root);
  for (const path of pathsOf(whole.root)) {
    for (const points of ['key', 'value'] as const)
      expect([path, points, ours.locate(path, points)]).toEqual([path, points, whole.locate(path, points)]);
  }
  return true;
}

test('demo plans, the starter and large plans are plain, and are read as the whole parser reads them', () => {
  for (const text of [...demos, examplePlan(''), largePlan(20), starterPlan])
    expect(readsAlike(text)).toBe(true);
});

test('whatever is changed in a plan, it is read as the whole parser reads it, or left to it', () => {
  const bits = [
    ' ',
    '  ',
    '\n',
    '\n  ',
    ': ',
    ':',
    ',',
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    '#',
    ' #',
    '#1',
    '- ',
    '-',
    '?',
    '&a',
    '*a',
    '!',
    '|',
    '>',
    '~',
    'null',
    '0x1F',
    '1e5',
    '012',
    'a',
    '.',
    '\\',
    'é',
    '—',
    '%',
    '@',
    '...',
    '---',
    '\t',
    '\r',
  ];
  let plain = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...texts),
      fc.array(fc.tuple(fc.nat(), fc.nat(6), fc.constantFrom(...bits, '', '')), {
        minLength: 1,
        maxLength: 3,
      }),
      (text, edits) => {
        // A few sections of it are enough, and quicker.
        const sections = text.split(/\n(?=[a-z])/);
        const start = (edits[0]?.[0] ?? 0) % sections.length;
        let changed = sections.slice(start, start + 2).join('\n');
        for (const [at, cut, bit] of edits) {
          const place = at % (changed.length + 1);
          changed = changed.slice(0, place) + bit + changed.slice(place + cut);
        }
        if (readsAlike(changed)) plain += 1;
      },
    ),
    { numRuns: 400 },
  );
  expect(plain).toBeGreaterThan(50);
});

test.each([
  ['a: 1', { a: 1 }],
  ['a: 146.940', { a: 146.94 }],
  ['a: 023', { a: '023' }],
  ['a: -0.6 # usual', { a: -0.6 }],
  ['a:\n  - b: 1\n    c: [x, "y, z"]\n  - { d: e }', { a: [{ b: 1, c: ['x', 'y, z'] }, { d: 'e' }] }],
  ['a:\n- 1\n- 2\nb: {}', { a: [1, 2], b: {} }],
  ['a:\nb: no', { a: null, b: 'no' }],
] as const)('%j is plain', (text, value) => {
  expect(readsAlike(text)).toBe(true);
  expect(readPlainYaml(text)?.root).toEqual(value);
});

test.each([
  'a: &x 1',
  'a: *x',
  'a: !t 1',
  'a: |\n  x',
  'a: x\n  y',
  'a: 1\na: 2',
  'a:\t1',
  'a: "x\\n"',
  '? a',
  'a: {b: 1,\n c: 2}',
  'a: b: c',
  'a: x #1',
  '- {a: 1',
  'a',
  '',
])('%j is left to the whole parser', (text) => {
  expect(readPlainYaml(text)).toBeUndefined();
});
