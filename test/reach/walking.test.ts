import { describe, expect, it } from 'vitest';
import { naismithS, offPathFactor, stepS, toblerKmh } from '../../src/reach/walking.ts';

describe('walking', () => {
  // Tobler (1993): 6 exp(-3.5 |s + 0.05|) km/h.
  it.each([
    [-0.5, 1.242],
    [-0.3, 2.501],
    [-0.1, 5.037],
    [-0.05, 6],
    [0, 5.037],
    [0.05, 4.228],
    [0.1, 3.549],
    [0.2, 2.501],
    [0.5, 0.875],
  ])('on a slope of %f goes at %f km/h', (slope, kmh) => {
    expect(toblerKmh(slope)).toBeCloseTo(kmh, 3);
  });

  // Naismith (1892): 5 km/h and 10 minutes for each 100 m of ascent.
  it.each([
    [1000, 0, 12],
    [1000, 100, 22],
    [500, 150, 21],
    [2500, 300, 60],
    [10_000, 600, 180],
  ])('over %d m with %d m of ascent takes %d minutes by the old rule', (distanceM, ascentM, minutes) => {
    expect(naismithS(distanceM, ascentM) / 60).toBeCloseTo(minutes, 9);
  });

  it('takes longer without a path, and does not climb cliffs', () => {
    expect(stepS(100, 0) * offPathFactor).toBeCloseTo(stepS(100, 0, true), 9);
    expect(stepS(90, 100)).toBe(Number.POSITIVE_INFINITY);
    expect(stepS(90, -100)).toBe(Number.POSITIVE_INFINITY);
  });
});
