import { expect, test } from 'vitest';
import { dayStarts } from '../../src/schedule/day-starts.ts';

const hours = (first: number, last: number | undefined, every: number | undefined) =>
  dayStarts(
    first * 60,
    last === undefined ? undefined : last * 60,
    every === undefined ? undefined : every * 60,
  ).map((minute) => minute / 60);

// The Wilderness Protocol as printed in QST, February 1995, p. 100, and quoted by clubs: five minutes every three
// hours from 07:00; some give 22:00 as the last, some 19:00.
test('a watch every three hours from seven to ten at night begins six times', () => {
  expect(hours(7, 22, 3)).toEqual([7, 10, 13, 16, 19, 22]);
  expect(hours(7, 19, 3)).toHaveLength(5);
});

test('a watch every three hours round the clock begins eight times', () => {
  expect(hours(0, undefined, 3)).toEqual([0, 3, 6, 9, 12, 15, 18, 21]);
});

test('a watch that ends earlier on the clock than it begins runs past midnight', () => {
  expect(hours(20, 2, 3)).toEqual([20, 23, 26]);
});

test('a check-in that does not repeat begins once', () => {
  expect(hours(7, undefined, undefined)).toEqual([7]);
});
