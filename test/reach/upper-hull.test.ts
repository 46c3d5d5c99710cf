import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addToHull, farthestAbove, highestSeenBack, upperHull } from '../../src/reach/upper-hull.ts';

describe('the horizon seen back over the ground', () => {
  const ground = fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 200 });

  it('is that of looking at every sample', () => {
    fc.assert(
      fc.property(ground, fc.double({ min: -500, max: 1500, noNaN: true }), (heights, fromY) => {
        const hull = upperHull(heights.length);
        for (const [index, height] of heights.entries()) addToHull(hull, index + 1, height);
        const fromX = heights.length + 1;
        const found = highestSeenBack(hull, fromX, fromY);
        const slope = ((hull.y[found] ?? 0) - fromY) / (fromX - (hull.x[found] ?? 0));
        const wanted = Math.max(...heights.map((height, index) => (height - fromY) / (fromX - index - 1)));
        expect(slope).toBeCloseTo(wanted, 9);
      }),
    );
  });

  it('finds the point farthest above a slope', () => {
    fc.assert(
      fc.property(ground, fc.double({ min: -50, max: 50, noNaN: true }), (heights, slope) => {
        const hull = upperHull(heights.length);
        for (const [index, height] of heights.entries()) addToHull(hull, index + 1, height);
        const found = farthestAbove(hull, slope, hull.size - 1);
        const wanted = Math.max(...heights.map((height, index) => height - slope * (index + 1)));
        expect((hull.y[found] ?? 0) - slope * (hull.x[found] ?? 0)).toBeCloseTo(wanted, 9);
      }),
    );
  });
});
