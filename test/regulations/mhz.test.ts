import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mhz } from '../../src/regulations/mhz.ts';

test('a frequency is read to the hertz, without the slips of binary fractions', () => {
  expect([mhz('146.940'), mhz('446.00625'), mhz('446.003125'), mhz('5'), mhz('-0.6')]).toEqual([
    146_940_000, 446_006_250, 446_003_125, 5_000_000, -600_000,
  ]);
  fc.assert(
    fc.property(fc.nat(3_000), fc.nat(999_999), (whole, fraction) => {
      expect(mhz(`${whole}.${String(fraction).padStart(6, '0')}`)).toBe(whole * 1_000_000 + fraction);
    }),
  );
});

test.each(['146,940', '146.9400001', '.5', '146.', '1e3', '', '146.94 MHz'])('%j is refused', (text) => {
  expect(() => mhz(text)).toThrow(RangeError);
});
