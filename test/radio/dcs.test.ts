import { expect, test } from 'vitest';
import {
  canonicalSignal,
  dcsAliases,
  dcsCodes83,
  dcsCodes104,
  dcsCodes112,
  dcsInverse,
  dcsInverses,
  dcsSignal,
  dcsWord,
  isDcsCode,
  usualDcsName,
} from '../../src/radio/dcs.ts';
import { dcsPairs, furtherCodes } from '../sources/dcs-pairs.ts';

const everyCode = Array.from({ length: 512 }, (_, code) => code.toString(8).padStart(3, '0'));
const ones = (word: number) => word.toString(2).replaceAll('0', '').length;

test.each(dcsPairs)('%s inverted is read as %s, as the conversion chart has it', (normal, inverted) => {
  expect(dcsInverse(normal)).toBe(inverted);
  expect(canonicalSignal(normal, true)).toBe(canonicalSignal(inverted, false));
});

test('the three lists hold 83, 104 and 112 codes, each within the next', () => {
  expect([dcsCodes83.length, dcsCodes104.length, dcsCodes112.length]).toEqual([83, 104, 112]);
  expect(dcsCodes104).toEqual(dcsPairs.map(([normal]) => normal));
  expect(dcsCodes104).toEqual(expect.arrayContaining([...dcsCodes83]));
  expect(dcsCodes112).toEqual([...dcsCodes104, ...furtherCodes].sort());
});

test('no two codes of the 112 are one signal', () => {
  expect(new Set(dcsCodes112.map((code) => canonicalSignal(code, false))).size).toBe(112);
});

// The weights of the (23,12) Golay code: 0, 7, 8, 11, 12, 15, 16 and 23 only; minimum distance 7, cyclic
// (MacWilliams and Sloane, The Theory of Error-Correcting Codes, 1977, chapter 2; chapter from memory).
test('every word of every code is a word of the Golay code', () => {
  for (const code of everyCode) {
    expect([7, 8, 11, 12, 15, 16]).toContain(ones(dcsWord(code)));
  }
});

test('any two different codes differ in at least seven bits', () => {
  for (const a of everyCode) {
    for (const b of everyCode) {
      if (a < b) expect(ones(dcsWord(a) ^ dcsWord(b))).toBeGreaterThanOrEqual(7);
    }
  }
});

test('a receiver cannot tell 023 from 340 or 766', () => {
  expect(dcsAliases('023')).toEqual(['340', '766']);
  expect(dcsInverses('023')).toEqual(['047', '375', '707']);
  expect(usualDcsName('340')).toBe('023');
  // 645 and 526 are one word, and so are 017 and 050 inverted: lists that print both print one twice.
  expect(canonicalSignal('645', false)).toBe(canonicalSignal('526', false));
  expect(canonicalSignal('017', false)).toBe(canonicalSignal('050', true));
});

test('an inverted signal is turned back by a second inversion', () => {
  for (const code of everyCode) {
    expect(dcsSignal(code, true) ^ dcsSignal(code, false)).toBe(2 ** 23 - 1);
    for (const inverse of dcsInverses(code)) expect(dcsInverses(inverse)).toContain(code);
  }
});

test('a few codes have no inverse that a radio could be set to', () => {
  expect(everyCode.filter((code) => dcsInverse(code) === undefined)).toEqual(['112', '250', '505', '512']);
});

test('a code is three octal digits and nothing else', () => {
  expect(['023', '754', '000', '777'].every(isDcsCode)).toBe(true);
  expect(['23', '0023', '089', 'D023', '', ' 23'].some(isDcsCode)).toBe(false);
  expect(() => dcsWord('89')).toThrow(RangeError);
});
