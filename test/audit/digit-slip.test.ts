import { expect, test } from 'vitest';
import { digitSlip } from '../../src/audit/digit-slip.ts';

test.each([
  ['146.490', '146.940', 'digits-exchanged'],
  ['164.940', '146.940', 'digits-exchanged'],
  ['146.049', '146.940', 'digits-exchanged'],
  ['146.970', '146.940', 'one-digit-wrong'],
  ['147.940', '146.940', 'one-digit-wrong'],
  ['6.000', '0.600', 'point-moved'],
  ['0.5', '5.000', 'point-moved'],
  ['462.6', '462.625', undefined],
  ['462.65', '462.625', 'digit-left-out'],
  ['14.325', '144.325', 'digit-left-out'],
  ['146.940', '146.940', undefined],
  ['445.000', '146.940', undefined],
])('%s for %s', (shown, planned, slip) => {
  expect(digitSlip(shown, planned)).toBe(slip);
});
