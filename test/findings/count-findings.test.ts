import { expect, test } from 'vitest';
import { countFindings, countsText } from '../../src/findings/count-findings.ts';
import { unused, unusualOffset } from './machine-formats.ts';

test('findings are counted by severity and said in words', () => {
  expect(countFindings([unused, unusualOffset, unused])).toEqual({ error: 0, warning: 1, note: 2 });
  expect(countsText({ error: 0, warning: 1, note: 2 })).toBe('no errors, 1 warning, 2 notes');
});
