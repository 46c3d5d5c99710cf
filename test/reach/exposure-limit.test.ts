import { describe, expect, it } from 'vitest';
import { exposureLimit } from '../../src/reach/exposure-limit.ts';

const mwCm2 = (rules: 'fcc' | 'icnirp', group: 'public' | 'occupational', mhz: number) =>
  (exposureLimit(rules, group, mhz * 1e6)?.densityWm2 ?? Number.NaN) / 10;

describe('limits of exposure', () => {
  // 47 CFR 1.1310, table 1, general population, mW/cm²; the occupational row is five times it.
  it.each([
    [14.2, 0.8927],
    [28.4, 0.2232],
    [146, 0.2],
    [446, 0.2973],
    [1294.5, 0.863],
  ])('in the United States at %f MHz are %f mW/cm² for the public', (mhz, limit) => {
    expect(mwCm2('fcc', 'public', mhz)).toBeCloseTo(limit, 4);
    expect(mwCm2('fcc', 'occupational', mhz) / mwCm2('fcc', 'public', mhz)).toBeCloseTo(5, 9);
  });

  it('meet at the edges of their rows', () => {
    for (const [mhz, group] of [
      [30, 'public'],
      [300, 'public'],
      [1500, 'public'],
      [3, 'occupational'],
      [30, 'occupational'],
      [300, 'occupational'],
      [1500, 'occupational'],
    ] as const) {
      const [below, above] = [mwCm2('fcc', group, mhz * 0.999_999), mwCm2('fcc', group, mhz * 1.000_001)];
      expect(below / above).toBeCloseTo(1, 4);
      expect(mwCm2('fcc', group, mhz)).toBeLessThanOrEqual(Math.max(below, above));
    }
  });

  it('are averaged over 30 minutes for the public and 6 for those who control their exposure (1.1310)', () => {
    expect(exposureLimit('fcc', 'public', 146e6)?.averagedOverS).toBe(1800);
    expect(exposureLimit('fcc', 'occupational', 146e6)?.averagedOverS).toBe(360);
  });

  it('elsewhere follow ICNIRP 2020: 2 W/m² for the public from 30 to 400 MHz, f/200 above (from memory)', () => {
    expect(mwCm2('icnirp', 'public', 146)).toBeCloseTo(0.2, 9);
    expect(mwCm2('icnirp', 'occupational', 446)).toBeCloseTo(1.115, 9);
    // At 27 MHz: 300 / f^0.7 V/m is 29.9 V/m or 2.37 W/m² of plane wave.
    expect(mwCm2('icnirp', 'public', 27)).toBeCloseTo(0.237, 3);
  });

  it('do not exist outside the tables', () => {
    expect(exposureLimit('fcc', 'public', 100_000)).toBeUndefined();
  });
});
