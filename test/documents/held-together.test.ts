import { expect, test } from 'vitest';
import { heldTogether } from '../../src/documents/held-together.ts';

test('a figure keeps its unit, and other words part from figures as they like', () => {
  expect(heldTogether('over 15.1 km the margin is -6 dB, give or take 9.')).toBe(
    'over 15.1\u00a0km the margin is -6\u00a0dB, give or take 9.',
  );
  expect(heldTogether('25 kHz at 146.940 MHz for 5 members, slot 1 Mill')).toBe(
    '25\u00a0kHz at 146.940\u00a0MHz for 5 members, slot 1 Mill',
  );
});
