import { describe, expect, it } from 'vitest';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';

describe('free space (ITU-R P.525)', () => {
  // 20 log(4 pi d f / c) with c = 299 792 458 m/s; the rounded form of the Recommendation, 32.4 + 20 log f + 20 log d, is 0.048 dB less.
  it.each([
    [50, 1, 66.427],
    [146, 10, 95.735],
    [222, 50, 113.354],
    [446, 1, 85.434],
    [902, 10, 111.552],
    [1296, 50, 128.679],
  ])('loses at %d MHz over %d km %f dB', (frequencyMhz, distanceKm, lossDb) => {
    expect(freeSpaceLossDb(frequencyMhz * 1e6, distanceKm * 1000)).toBeCloseTo(lossDb, 3);
    expect(
      freeSpaceLossDb(frequencyMhz * 1e6, distanceKm * 1000) -
        (32.4 + 20 * Math.log10(frequencyMhz * distanceKm)),
    ).toBeCloseTo(0.048, 3);
  });
});
