import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smallCuts } from '../../src/fallback/small-cuts.ts';

const letters = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const ways = fc.array(
  fc.subarray(letters).map((things) => new Set(things)),
  { minLength: 1, maxLength: 6 },
);

// Oracle: try every one and every two.
test('the cuts of one and of two are those that trying every one and every two finds', () => {
  fc.assert(
    fc.property(ways, (given) => {
      const cuts = (...failed: string[]) => given.every((way) => failed.some((thing) => way.has(thing)));
      const singles = letters.filter((thing) => cuts(thing));
      const pairs = letters.flatMap((one) =>
        letters
          .filter(
            (other) => one < other && !singles.includes(one) && !singles.includes(other) && cuts(one, other),
          )
          .map((other) => `${one} ${other}`),
      );
      const found = smallCuts(given);
      expect([...found.singles].toSorted()).toEqual(singles);
      expect(found.pairs.map((pair) => pair.join(' ')).toSorted()).toEqual(pairs.toSorted());
    }),
    { numRuns: 3000, seed: 9 },
  );
});

test('a fallback on the same hilltop as the first choice is no fallback when the hilltop goes', () => {
  const first = new Set(['repeater', 'hilltop', 'feeder']);
  const second = new Set(['digipeater', 'hilltop']);
  const found = smallCuts([first, second]);
  expect([...found.singles]).toEqual(['hilltop']);
  expect(found.pairs).toEqual([
    ['digipeater', 'repeater'],
    ['digipeater', 'feeder'],
  ]);
});
