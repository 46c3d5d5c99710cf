import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearby } from '../../src/regulations/nearby.ts';
import { overlaps } from '../../src/regulations/span.ts';

const hertz = fc.oneof(
  fc.nat(4_000_000),
  fc.nat(4).map((mhz) => mhz * 1_000_000),
);
const span = fc
  .tuple(hertz, fc.oneof(fc.constant(0), hertz))
  .map(([fromHz, length]) => ({ fromHz, toHz: fromHz + length }));

test('leaves out no row that a stretch touches, whatever was asked before, and keeps the order of the table', () => {
  fc.assert(
    fc.property(fc.array(span), fc.array(span, { minLength: 1 }), (table, asked) => {
      for (const wanted of asked) {
        const touching = table.filter((row) => row.fromHz <= wanted.toHz && row.toHz >= wanted.fromHz);
        const found = nearby(table, wanted.fromHz, wanted.toHz);
        expect(found.filter((row) => touching.includes(row))).toEqual(touching);
        expect(found).toEqual(table.filter((row) => found.includes(row)));
        expect(found.filter((row) => overlaps(row, wanted))).toEqual(
          table.filter((row) => overlaps(row, wanted)),
        );
      }
    }),
  );
});

test('asks no row of another megahertz', () => {
  const table = [
    { fromHz: 144_000_000, toHz: 148_000_000 },
    { fromHz: 162_400_000, toHz: 162_400_000 },
  ];
  expect(nearby(table, 162_400_000)).toEqual([table[1]]);
  expect(nearby(table, 150_000_000)).toEqual([]);
});
