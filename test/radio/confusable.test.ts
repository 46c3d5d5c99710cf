import { expect, test } from 'vitest';
import { alikeByEar, alikeByEye, soundKey } from '../../src/radio/confusable.ts';

// Pairs named by the Institute for Safe Medication Practices (l and 1, O and 0, Z and 2), and S 5, B 8 (from memory).
test.each([
  ['OSCAR', '0SCAR'],
  ['SIMP I', 'SIMP 1'],
  ['LINK', '1INK'],
  ['ZULU', '2ULU'],
  ['S1', '51'],
  ['B1', '81'],
  ['SIMP-1', 'SIMP 1'],
])('%s and %s look alike on a small display', (a, b) => {
  expect(alikeByEye(a, b)).toBe(true);
});

test.each([
  ['SIMP 1', 'SIMP 2'],
  ['GAP', 'CAP'],
  ['GAP', 'GAP'],
  ['', '-'],
])('%s and %s are told apart by eye', (a, b) => {
  expect(alikeByEye(a, b)).toBe(false);
});

// Voiced and unvoiced consonants, and M and N, are the confusions Miller and Nicely (1955) found largest in noise (from memory).
test.each([
  ['GAP', 'CAP'],
  ['PATH', 'BATH'],
  ['MET', 'NET'],
  ['SIMP 2', 'Simp two'],
  ['FIELD', 'VIELD'],
  ['PHONE', 'FONE'],
  ['HUT  ', 'HUTT'],
  ['TRAIL 4', 'TRAIL FOR'],
])('%s and %s sound alike over a poor channel', (a, b) => {
  expect(alikeByEar(a, b), `${soundKey(a)} ${soundKey(b)}`).toBe(true);
});

test.each([
  ['SIMP 1', 'SIMP 2'],
  ['GAP', 'KNOB'],
  ['TRAIL', 'VALLEY'],
  ['CH 11', 'CH 1'],
  ['WX', 'GAP'],
  ['GAP', 'GAP'],
  ['constructor', 'x'],
])('%s and %s are told apart by ear', (a, b) => {
  expect(alikeByEar(a, b)).toBe(false);
});
