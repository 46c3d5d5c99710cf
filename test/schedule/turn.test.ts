import { expect, test } from 'vitest';
import { turnOf } from '../../src/schedule/turn.ts';

const crew = ['ada', 'ben', 'cal'];
const on = (date: string, daysBefore = 0, timesBefore = 0) => ({ date, daysBefore, timesBefore });

test('a turn of a week runs from Monday to Sunday, the first being that of the date of effect', () => {
  // 1 December 2026 is a Tuesday.
  const names = ['2026-12-01', '2026-12-06', '2026-12-07', '2026-12-13', '2026-12-14', '2026-12-21'].map(
    (date) => turnOf(crew, 'week', '2026-12-01', on(date)),
  );
  expect(names).toEqual(['ada', 'ada', 'ben', 'ben', 'cal', 'ada']);
});

test('a turn of a day passes on with each day it is held, however far apart', () => {
  expect(turnOf(crew, 'day', '2026-12-01', on('2026-12-10', 4, 9))).toBe('ben');
});

test('a turn of a time passes on within a day', () => {
  expect(turnOf(crew, 'time', '2026-12-01', on('2026-12-10', 4, 9))).toBe('ada');
});

test('nobody has a turn where nobody is named', () => {
  expect(turnOf([], 'week', '2026-12-01', on('2026-12-10'))).toBeUndefined();
});
