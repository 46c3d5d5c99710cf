import { expect, test } from 'vitest';
import { editDistance, nearest } from '../../src/findings/nearest.ts';

// Worked examples of the literature: kitten and sitting, Saturday and Sunday (Levenshtein); CA and ABC, where
// the optimal string alignment gives 3 and the unrestricted distance 2; the swap of Damerau (1964).
test.each([
  ['kitten', 'sitting', 3],
  ['Saturday', 'Sunday', 3],
  ['CA', 'ABC', 3],
  ['offset', 'offest', 1],
  ['', 'abc', 3],
  ['abc', '', 3],
  ['a', 'a', 0],
])('%j is changed into %j by %d slips', (a, b, slips) => {
  expect(editDistance(a, b)).toBe(slips);
});

const keys = [
  'name',
  'call',
  'output',
  'offset',
  'output-tone',
  'tone',
  'time-out',
  'depends-on',
  'at',
  'to',
];

test.each([
  ['offest', 'offset'],
  ['ofset', 'offset'],
  ['Output_Tone', 'output-tone'],
  ['timeout', 'time-out'],
  ['depend-on', 'depends-on'],
  ['nmae', 'name'],
  ['TONE', 'tone'],
])('whoever writes %s meant %s', (written, meant) => {
  expect(nearest(written, keys)).toBe(meant);
});

test.each(['frequency', 'x', '', 'o'.repeat(5000), 'zzzz'])('nothing is guessed for %s', (written) => {
  expect(nearest(written, keys)).toBeUndefined();
});
