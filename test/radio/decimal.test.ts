import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, isWhole, multiply, parseDecimal, toNumber } from '../../src/radio/decimal.ts';

function decimal(text: string) {
  const parsed = parseDecimal(text);
  if (parsed === undefined) throw new Error(`${text} was not read`);
  return parsed;
}

// Sums that IEEE 754 binary arithmetic gets wrong, and schoolbook arithmetic does not.
test('0.1 and 0.2 make 0.3, and 146.94 MHz less 0.6 MHz is 146.34 MHz', () => {
  expect(0.1 + 0.2).not.toBe(0.3);
  expect(toNumber(add(decimal('0.1'), decimal('0.2')))).toBe(0.3);
  expect(toNumber(add(decimal('146.94'), decimal('-0.6')))).toBe(146.34);
  expect(toNumber(multiply(decimal('1.005'), decimal('1000')))).toBe(1005);
});

test('a number is whole when only zeros follow its point', () => {
  expect(['12', '12.', '12.000', '-3.0', '0'].map((text) => isWhole(decimal(text)))).toEqual([
    true,
    true,
    true,
    true,
    true,
  ]);
  expect(isWhole(decimal('12.001'))).toBe(false);
});

test.each(['', '.', '+', '-.', '1e3', '1,5', '0x1', ' 1', '١', '1'.repeat(25)])(
  '%j is no plain number',
  (text) => {
    expect(parseDecimal(text)).toBeUndefined();
  },
);

test('there is no negative zero', () => {
  expect(Object.is(toNumber(decimal('-0.00')), 0)).toBe(true);
});

test('every number JavaScript writes in plain digits is read as itself', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
      const text = String(value);
      fc.pre(!text.includes('e') && text.length <= 24 && !Object.is(value, -0));
      expect(toNumber(decimal(text))).toBe(value);
    }),
  );
});
