import { describe, expect, it } from 'vitest';
import { fadingSpreadDb, locationSpreadDb } from '../../src/reach/spread.ts';
import { chanceOf, normalShareBelow, verdictOf } from '../../src/reach/verdict.ts';

describe('how sure a path is', () => {
  // Quantiles of the normal curve as printed in any table of it.
  it.each([
    [0, 0.5],
    [0.5244, 0.7],
    [0.8416, 0.8],
    [1.2816, 0.9],
    [1.6449, 0.95],
    [2.3263, 0.99],
    [-1.2816, 0.1],
  ])('%f standard deviations leave %f below', (z, share) => {
    expect(normalShareBelow(z)).toBeCloseTo(share, 4);
  });

  it('is nine in ten with 10 dB in hand and a spread of 8', () => {
    expect(chanceOf(10.25, 8)).toBeCloseTo(0.9, 3);
  });

  it('is called by four words', () => {
    expect([0.99, 0.95, 0.94, 0.75, 0.74, 0.5, 0.25, 0.24, 0].map(verdictOf)).toEqual([
      'solid',
      'solid',
      'likely',
      'likely',
      'doubtful',
      'doubtful',
      'doubtful',
      'no',
      'no',
    ]);
  });
});

describe('spread', () => {
  // ITU-R P.1812-8 §4.7, worked: side of the square, MHz, dB.
  it.each([
    [146, 30, 1.36],
    [146, 100, 1.9],
    [146, 1000, 3.62],
    [446, 100, 1.93],
    [446, 500, 3.02],
  ])('over a place at %d MHz in a square of %d m is %f dB', (mhz, sideM, spreadDb) => {
    expect(locationSpreadDb(mhz * 1e6, sideM)).toBeCloseTo(spreadDb, 2);
  });

  it('over time grows with distance, more so at VHF (classic planning figures, from memory)', () => {
    expect([0, 25, 50, 100, 150, 400].map((km) => fadingSpreadDb(146e6, km * 1000))).toEqual([
      0, 1.5, 3, 7, 9, 9,
    ]);
    expect(fadingSpreadDb(446e6, 100_000)).toBe(5);
  });
});
