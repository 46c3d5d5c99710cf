import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addToHull, farthestAbove, highestSeenBack, upperHull } from '../../src/reach/upper-hull.ts';

describe('the horizon seen back over the ground', () => {
  const ground = fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 200 });

  it('is that of looking at every sample, wherever the search begins', () => {
    fc.assert(
      fc.property(
        ground,
        fc.double({ min: -500, max: 1500, noNaN: true }),
        fc.nat(220),
        (heights, fromY, begin) => {
          const hull = upperHull(heights.length);
          for (const [index, height] of heights.entries()) addToHull(hull, index + 1, height, index);
          const fromX = heights.length + 1;
          const found = hull.names[highestSeenBack(hull, fromX, fromY, begin)] ?? 0;
          const slope = ((heights[found] ?? 0) - fromY) / (fromX - found - 1);
          const wanted = Math.max(...heights.map((height, index) => (height - fromY) / (fromX - index - 1)));
          expect(slope).toBeCloseTo(wanted, 9);
        },
      ),
    );
  });

  it('finds the point farthest above a slope', () => {
    fc.assert(
      fc.property(
        ground,
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.nat(220),
        (heights, slope, begin) => {
          const hull = upperHull(heights.length);
          for (const [index, height] of heights.entries()) addToHull(hull, index + 1, height, index);
          const found = hull.names[farthestAbove(hull, slope, begin)] ?? 0;
          const wanted = Math.max(...heights.map((height, index) => height - slope * (index + 1)));
          expect((heights[found] ?? 0) - slope * (found + 1)).toBeCloseTo(wanted, 9);
        },
      ),
    );
  });
});
