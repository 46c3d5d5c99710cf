import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { starterPlan } from '../../src/plan/starter-plan.ts';
import { everyKey } from '../plan/every-key.ts';
import { demo, emptyFolder, readback } from './readback.ts';

const printed = JSON.parse(readback(['schema']).out);
const ajv = new Ajv({ strict: false, allErrors: true });

test('is JSON Schema of draft-07, which editors of YAML read', () => {
  expect(printed.$schema).toBe('http://json-schema.org/draft-07/schema#');
  expect(ajv.validateSchema(printed), JSON.stringify(ajv.errors)).toBe(true);
});

test.each([
  ['the demonstration', readFileSync(demo, 'utf8')],
  ['the plan to start from', starterPlan],
  ['a plan with every key', everyKey],
])('accepts %s', (_, text) => {
  // An editor sees what YAML says: plain objects.
  const seen = JSON.parse(JSON.stringify(readYaml(text).root));
  expect(ajv.validate(printed, seen), JSON.stringify(ajv.errors)).toBe(true);
});

test.each([
  ['an unknown key', (text: string) => text.replace('sheet:', 'shet:')],
  ['a word that is none of those allowed', (text: string) => text.replace('sheet: a4', 'sheet: a5')],
  ['a missing key', (text: string) => text.replace('    output: 146.940\n', '')],
  ['a slot that is no number', (text: string) => text.replace('  21: {', '  twenty: {')],
])('does not accept %s', (_, change) => {
  expect(change(everyKey)).not.toBe(everyKey);
  expect(ajv.validate(printed, JSON.parse(JSON.stringify(readYaml(change(everyKey)).root)))).toBe(false);
});

test('is written to a file when asked', () => {
  const folder = emptyFolder();
  expect(readback(['schema', '--out', 'plan.schema.json'], { cwd: folder }).status).toBe(0);
  expect(JSON.parse(readFileSync(join(folder, 'plan.schema.json'), 'utf8'))).toEqual(printed);
});
