import { describe, expect, it } from 'vitest';
import { feedLineLossDb, feedLines } from '../../src/reach/feed-line.ts';

describe('feed lines', () => {
  // dB per 100 m. 150 and 450 MHz: a training guide for builders of repeater systems and a county group's cable page. Others: the form
  // p sqrt(f) + q f laid through those two.
  it.each([
    ['rg-58', 150, 20],
    ['rg-58', 450, 35.5],
    ['rg-58', 222, 24.5],
    ['rg-213', 150, 8.9],
    ['rg-213', 446, 16.2],
    ['rg-8x', 146, 15.2],
    ['low-loss-10mm', 446, 8.8],
    ['low-loss-15mm', 222, 4.0],
  ] as const)('of %s lose at %d MHz %f dB in 100 m', (line, mhz, lossDb) => {
    expect(Math.abs(feedLineLossDb(line, 100, mhz * 1e6, 0) - lossDb)).toBeLessThan(0.07);
  });

  it('lose a quarter of a decibel a connector at 150 MHz and more above', () => {
    // Same training guide: 0.25 dB at 150 MHz, 0.5 at 450.
    expect(feedLineLossDb('rg-213', 0, 150e6, 2)).toBeCloseTo(0.5, 6);
    expect(feedLineLossDb('rg-213', 0, 450e6, 1)).toBeCloseTo(0.5, 6);
  });

  it('lose more when longer, higher or thinner', () => {
    for (const line of feedLines) {
      expect(feedLineLossDb(line, 30, 146e6)).toBeGreaterThan(feedLineLossDb(line, 10, 146e6));
      expect(feedLineLossDb(line, 30, 446e6)).toBeGreaterThan(feedLineLossDb(line, 30, 146e6));
    }
    expect(feedLineLossDb('rg-58', 30, 146e6)).toBeGreaterThan(feedLineLossDb('rg-213', 30, 146e6));
  });
});
