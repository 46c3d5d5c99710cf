import { expect, test } from 'vitest';
import { load } from '../../src/plan/load.ts';
import { slip } from './slip.ts';

test('a comma inside braces that cuts a text in two is named as that, wherever the rest of the text lands', () => {
  const { findings } = load(
    'readback: 1\nmembers:\n  ada: { contact: { door: Yard, first left } }\n',
    'p.yaml',
  );
  expect(
    findings.map(({ rule, message, place }) => [rule, message, place.line, place.column]),
  ).toContainEqual([
    'plan/unknown-key',
    '`first left` is read as a key, because inside { } a comma ends the text before it; text with a comma needs quotes.',
    3,
    33,
  ]);
  expect(findings.filter(({ path }) => path.includes('contact'))).toHaveLength(1);
});

test('what a file is called stands in what is said of it', () => {
  const of = (text: string) => load(text, 'p.yaml').findings.map(({ message }) => message);
  expect(of('')).toEqual(['The file is empty; a plan begins with `readback: 1`.']);
  expect(of(slip('readback: 1', 'readbak: 1'))[0]).toMatch(
    /^The plan has no `readback`|^`readbak` is not a key of a plan/,
  );
});
