import fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlappingPairs } from '../../src/consequences/overlapping-pairs.ts';
import type { CheckIn } from '../../src/plan/model.ts';

function checkIn(id: string, isoDays: readonly number[], minute: number, lastsMin: number): CheckIn {
  return {
    id,
    name: id,
    channel: 1,
    listen: true,
    days: { kind: 'weekdays', isoDays },
    at: { minute, utc: false },
    lastsMin,
    who: 'all',
    control: [],
    turn: 'week',
  };
}

const pairs = (...checkIns: CheckIn[]) =>
  overlappingPairs(checkIns).map(({ first, second }) => `${first.id} ${second.id}`);

test('one that begins as the other ends does not overlap it', () => {
  expect(pairs(checkIn('a', [1], 450, 15), checkIn('b', [1], 465, 5))).toEqual([]);
  expect(pairs(checkIn('a', [1], 450, 16), checkIn('b', [1], 465, 5))).toEqual(['a b']);
});

test('one that runs past the midnight of Sunday meets the Monday of the next week', () => {
  expect(pairs(checkIn('late', [7], 1430, 30), checkIn('early', [1], 5, 5))).toEqual(['late early']);
});

test('the same pair is told once however often it meets', () => {
  expect(pairs(checkIn('a', [1, 2, 3, 4, 5, 6, 7], 450, 15), checkIn('b', [1, 3, 5], 455, 5))).toEqual([
    'a b',
  ]);
});

test('every pair that shares a minute of the week is found, and no other', () => {
  const entry = fc.record({
    isoDays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 3 }),
    minute: fc.integer({ min: 0, max: 1439 }),
    lastsMin: fc.integer({ min: 1, max: 600 }),
  });
  fc.assert(
    fc.property(fc.array(entry, { maxLength: 6 }), (entries) => {
      const checkIns = entries.map(({ isoDays, minute, lastsMin }, index) =>
        checkIn(`c${index}`, isoDays, minute, lastsMin),
      );
      const minutes = entries.map(
        ({ isoDays, minute, lastsMin }) =>
          new Set(
            isoDays.flatMap((day) =>
              Array.from({ length: lastsMin }, (_, after) => ((day - 1) * 1440 + minute + after) % 10_080),
            ),
          ),
      );
      const wanted = minutes.flatMap((one, i) =>
        minutes.flatMap((other, j) =>
          i < j && [...one].some((minute) => other.has(minute)) ? [`c${i} c${j}`] : [],
        ),
      );
      const found = overlappingPairs(checkIns).map(({ first, second }) =>
        [first.id, second.id].sort().join(' '),
      );
      expect(found.sort()).toEqual(wanted.sort());
    }),
  );
});
