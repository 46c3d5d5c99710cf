import { describe, expect, it } from 'vitest';
import { wavelengthM } from '../../src/reach/free-space.ts';
import { firstFresnelZoneM } from '../../src/reach/fresnel.ts';
import { knifeEdgeLossDb, knifeEdgeParameter } from '../../src/reach/knife-edge.ts';

describe('a single knife edge (ITU-R P.526-15 §4.1)', () => {
  // Second column: the Fresnel-integral form -20 log(sqrt((1-C-S)^2 + (C-S)^2) / 2), which J approximates to 0.13 dB.
  it.each([
    [-0.78, -0.011],
    [-0.7, 0.4659],
    [-0.5, 1.8586],
    [0, 6.0206],
    [0.5, 10.2338],
    [1, 13.8641],
    [2.4, 20.6182],
    [5, 26.9362],
    [10, 32.9535],
  ])('loses at v = %f what the Fresnel integrals give, %f dB', (v, exactDb) => {
    expect(Math.abs(knifeEdgeLossDb(v) - exactDb)).toBeLessThan(0.13);
  });

  it('gives the figures of the formula itself', () => {
    expect(knifeEdgeLossDb(0)).toBeCloseTo(6.0329, 4);
    expect(knifeEdgeLossDb(1)).toBeCloseTo(13.9257, 4);
    expect(knifeEdgeLossDb(2.4)).toBeCloseTo(20.5393, 4);
    expect(knifeEdgeLossDb(-0.78)).toBe(0);
    expect(knifeEdgeParameter(20, wavelengthM(146e6), 5000, 5000)).toBeCloseTo(0.39477, 5);
    expect(knifeEdgeParameter(50, wavelengthM(446e6), 2000, 8000)).toBeCloseTo(2.15617, 5);
  });

  it('is clear when 0.55 of the first Fresnel zone is', () => {
    const zone = firstFresnelZoneM(446e6, 3000, 7000);
    expect(knifeEdgeLossDb(knifeEdgeParameter(-0.56 * zone, wavelengthM(446e6), 3000, 7000))).toBe(0);
    expect(knifeEdgeLossDb(knifeEdgeParameter(-0.5 * zone, wavelengthM(446e6), 3000, 7000))).toBeGreaterThan(
      0,
    );
  });
});
