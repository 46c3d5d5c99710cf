import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortNames } from '../../src/consequences/short-names.ts';

function namesOf(...names: string[]): string[] {
  return [...shortNames(names.map((name, index) => ({ id: `m${index}`, name }))).values()];
}

test('a first name that one member has stands alone', () => {
  expect(namesOf('Ward Ellison', 'Inez Varela')).toEqual(['Ward', 'Inez']);
});

test('two of one first name have as much of the surname as parts them', () => {
  expect(namesOf('Anna Berger', 'Anna Lindner', 'Otis Brandt')).toEqual(['Anna B.', 'Anna L.', 'Otis']);
  expect(namesOf('Anna Lindner', 'Anna Lindqvist')).toEqual(['Anna Lindn.', 'Anna Lindq.']);
  expect(namesOf('Anna Maria Berger', 'Anna Maria Kohler')).toEqual(['Anna Maria B.', 'Anna Maria K.']);
});

test('a surname that begins another one is whole, and so is the other where a point would save nothing', () => {
  expect(namesOf('Anna Berg', 'Anna Berger', 'Anna')).toEqual(['Anna Berg', 'Anna Berger', 'Anna']);
});

test('members of one whole name are told apart by their ids', () => {
  expect(namesOf('Anna Berg', 'Anna Berg')).toEqual(['Anna Berg (m0)', 'Anna Berg (m1)']);
});

test('no two members are called alike', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'é', 'o'), minLength: 1, maxLength: 4 });
  const name = fc.array(word, { minLength: 1, maxLength: 3 }).map((words) => words.join(' '));
  fc.assert(
    fc.property(fc.array(name, { maxLength: 12 }), (names) => {
      const short = namesOf(...names);
      expect(new Set(short).size).toBe(names.length);
    }),
  );
});
