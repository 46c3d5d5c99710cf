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

test('an id with capitals or spaces, and hertz where megahertz are read, are proposed as they were meant', () => {
  const proposals = (line: string) =>
    load(`readback: 1\n${line}\n`, 'p.yaml').findings.flatMap(({ suggestion }) => suggestion ?? []);
  expect(proposals('members:\n  Dana: { name: Dana }')).toContain('dana');
  expect(proposals('members:\n  José Núñez: { name: José }')).toContain('jose-nunez');
  expect(proposals('channels:\n  3: { name: WX, listen: 162550000 }')).toContain('162.550');
});
