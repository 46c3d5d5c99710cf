import { describe, expect, it } from 'vitest';
import { decibels20 } from '../../src/reach/decibel-table.ts';

describe('the table of decibels', () => {
  it('is within 0.00002 dB of the logarithm, from a millionth to a million', () => {
    for (let x = 1e-6; x < 1e6; x *= 1.000_73)
      expect(Math.abs(decibels20(x) - 20 * Math.log10(x))).toBeLessThan(0.000_02);
  });

  it('knows the decibels everybody knows', () => {
    expect(decibels20(1)).toBe(0);
    expect(decibels20(2)).toBeCloseTo(6.0206, 4);
    expect(decibels20(10)).toBeCloseTo(20, 4);
  });
});
