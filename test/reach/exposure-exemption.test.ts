import { describe, expect, it } from 'vitest';
import { nearFieldM } from '../../src/reach/exposure.ts';
import { exemptErpW } from '../../src/reach/exposure-exemption.ts';

describe('stations that need no evaluation (47 CFR 1.1307(b)(3)(i)(C))', () => {
  it.each([
    [14.2, 5, 427.74],
    [28.4, 2, 17.11],
    [146, 1, 3.83],
    [146, 2, 15.32],
    [446, 2, 22.835],
    [462.55, 0.5, 1.48],
    [915, 0.2, 0.4685],
    [2400, 0.5, 4.8],
  ])('at %f MHz with nobody within %f m are those up to %f W ERP', (mhz, distanceM, erpW) => {
    expect(Math.abs((exemptErpW(mhz * 1e6, distanceM) ?? 0) - erpW)).toBeLessThan(0.006);
  });

  it('are not found in the table nearer than the wavelength over 2 pi', () => {
    expect(exemptErpW(14.2e6, 3)).toBeUndefined();
    expect(nearFieldM(14.2e6)).toBeCloseTo(3.36, 2);
  });
});
