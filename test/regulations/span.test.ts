import fc from 'fast-check';
import { expect, test } from 'vitest';
import { covered, holds, overlaps } from '../../src/regulations/span.ts';

const span = fc.tuple(fc.nat(60), fc.nat(20)).map(([fromHz, length]) => ({ fromHz, toHz: fromHz + length }));

test('a stretch is covered when each of its half hertz lies in some span', () => {
  fc.assert(
    fc.property(span, fc.array(span, { maxLength: 6 }), (wanted, spans) => {
      const halves = Array.from(
        { length: 2 * (wanted.toHz - wanted.fromHz) + 1 },
        (_, k) => wanted.fromHz + k / 2,
      );
      expect(covered(wanted, spans)).toBe(halves.every((at) => spans.some((row) => holds(row, at))));
    }),
  );
});

test('spans overlap the same whichever is named first, and touch without overlapping', () => {
  fc.assert(
    fc.property(span, span, (a, b) => {
      expect(overlaps(a, b)).toBe(overlaps(b, a));
    }),
  );
  expect(overlaps({ fromHz: 1, toHz: 5 }, { fromHz: 5, toHz: 9 })).toBe(false);
  expect(overlaps({ fromHz: 5, toHz: 5 }, { fromHz: 5, toHz: 9 })).toBe(true);
});
