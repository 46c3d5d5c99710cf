import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatFrequency } from '../../src/radio/format-quantity.ts';
import { likelyFrequency } from '../../src/radio/likely-frequency.ts';

const only = (wantedHz: number) => (candidateHz: number) => (candidateHz === wantedHz ? 0 : undefined);

// Slips of the pen, worked by hand on the national calling frequency of the ARRL band plan, 146.520 MHz.
test.each([
  [164_520_000, 'digits exchanged'],
  [145_620_000, 'digits exchanged'],
  [146_250_000, 'digits exchanged'],
  [14_652_000, 'decimal point'],
  [1_465_200_000, 'decimal point'],
  [146_520_000_000, 'written in kHz'],
  [147_520_000, 'one megahertz off'],
  [145_520_000, 'one megahertz off'],
])('%i Hz is known as 146.520 MHz with %s', (writtenHz, slip) => {
  expect(likelyFrequency(writtenHz, only(146_520_000))).toEqual({ frequencyHz: 146_520_000, slip });
});

test('two slips at once are not guessed at', () => {
  expect(likelyFrequency(165_420_000, only(146_520_000))).toBeUndefined();
});

test('of several that would do, the one that would do best is named', () => {
  // 145.650 MHz could be 146.550 (digits) or 146.650 (one megahertz).
  const rank = (hz: number) => (hz === 146_550_000 ? 1 : hz === 146_650_000 ? 0 : undefined);
  expect(likelyFrequency(145_650_000, rank)?.frequencyHz).toBe(146_650_000);
});

test('whichever two neighbouring digits are exchanged, the frequency is found again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 26_000, max: 999_999 }), fc.nat(4), (khz, at) => {
      const digits = String(khz).padStart(6, '0').split('');
      [digits[at], digits[at + 1]] = [digits[at + 1] ?? '', digits[at] ?? ''];
      const writtenHz = Number(digits.join('')) * 1000;
      fc.pre(writtenHz !== khz * 1000 && !digits.join('').startsWith('0'));
      fc.pre(formatFrequency(khz * 1000).length === formatFrequency(writtenHz).length);
      expect(likelyFrequency(writtenHz, only(khz * 1000))?.frequencyHz).toBe(khz * 1000);
    }),
  );
});
