import { describe, expect, it } from 'vitest';
import { firstFresnelZoneM } from '../../src/reach/fresnel.ts';

describe('first Fresnel zone (ITU-R P.526 §2.1)', () => {
  it.each([
    [146, 10, 5, 71.648],
    [446, 10, 5, 40.993],
    [146, 50, 25, 160.21],
    [146, 20, 2, 60.795],
    [446, 1, 0.5, 12.963],
    [1296, 30, 15, 41.652],
  ])('is at %d MHz on a path of %d km, %f km along, %f m', (frequencyMhz, pathKm, alongKm, radiusM) => {
    const found = firstFresnelZoneM(frequencyMhz * 1e6, alongKm * 1000, (pathKm - alongKm) * 1000);
    expect(found).toBeCloseTo(radiusM, 3);
    // The Recommendation's own rounded constant, 550 sqrt(d1 d2 / (f d)) in km and MHz, reads 0.45 % more.
    expect((550 * Math.sqrt((alongKm * (pathKm - alongKm)) / (frequencyMhz * pathKm))) / found).toBeCloseTo(
      1.0045,
      3,
    );
  });
});
