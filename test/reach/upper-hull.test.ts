import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addToHull, farthestAbove, highestSeenBack, upperHull } from '../../src/reach/upper-hull.ts';

/** The hull of heights at x = 1, 2, … named from 0, lowered by so much for the square of x. */
function hullOf(heights: readonly number[], fallen = 0) {
  const hull = upperHull(heights.length);
  for (const [index, height] of heights.entries()) {
    hull.asked.set([index + 1, height - fallen * (index + 1) ** 2]);
    addToHull(hull, index);
  }
  return hull;
}

describe('the horizon seen back over the ground', () => {
  const ground = fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 200 });

  it('is that of looking at every sample, wherever the search begins', () => {
    fc.assert(
      fc.property(
        ground,
        fc.double({ min: -500, max: 1500, noNaN: true }),
        fc.nat(220),
        (heights, fromY, begin) => {
          const hull = hullOf(heights);
          const fromX = heights.length + 1;
          hull.asked.set([fromX, fromY]);
          const found = hull.names[highestSeenBack(hull, begin)] ?? 0;
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
          const hull = hullOf(heights);
          hull.asked.set([slope, 0]);
          const found = hull.names[farthestAbove(hull, begin)] ?? 0;
          const wanted = Math.max(...heights.map((height, index) => height - slope * (index + 1)));
          expect((heights[found] ?? 0) - slope * (found + 1)).toBeCloseTo(wanted, 9);
        },
      ),
    );
  });

  it('finds the point of a flat earth on the hull of a round one, but for the bulge between neighbours', () => {
    fc.assert(
      fc.property(
        ground,
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.nat(220),
        (heights, slope, begin) => {
          const fallen = 0.01;
          const hull = hullOf(heights, fallen);
          hull.asked.set([slope, fallen]);
          const found = hull.names[farthestAbove(hull, begin)] ?? 0;
          const wanted = Math.max(...heights.map((height, index) => height - slope * (index + 1)));
          const above = (heights[found] ?? 0) - slope * (found + 1);
          expect(above).toBeLessThanOrEqual(wanted);
          // No two points of the hull stand farther apart than the whole of it.
          expect(wanted - above).toBeLessThanOrEqual((fallen * heights.length ** 2) / 4 + 1e-9);
        },
      ),
    );
  });
});
