import { assert, double, property } from 'fast-check';
import { expect, it } from 'vitest';
import { thousandths } from '../../../src/documents/print/operands.ts';

it('a number keeps three decimals, and none that are zeros', () => {
  for (const [value, spelled] of [
    [0, '0'],
    [-0.0004, '0'],
    [0.07, '0.07'],
    [-0.5, '-0.5'],
    [12, '12'],
    [841.89, '841.89'],
    [-1.0005, '-1'],
    [99.9999, '100'],
  ] as const)
    expect(thousandths(value)).toBe(spelled);
});

it('every number reads back as itself, to half a thousandth, with no exponent', () => {
  assert(
    property(double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
      const spelled = thousandths(value);
      expect(spelled).toMatch(/^-?\d+(\.\d{1,3})?$/);
      expect(Math.abs(Number(spelled) - value)).toBeLessThanOrEqual(0.0005001);
    }),
  );
});
