import { describe, expect, it } from 'vitest';
import { earthBulgeM, effectiveEarthRadiusKm, radioHorizonKm } from '../../src/reach/earth.ts';

describe('the curved earth', () => {
  it('bulges as a circle of 8500 km does', () => {
    expect(earthBulgeM(5, 5)).toBeCloseTo(1.4706, 4);
    expect(earthBulgeM(25, 25)).toBeCloseTo(36.7647, 4);
    expect(earthBulgeM(10, 40)).toBeCloseTo(23.5294, 4);
  });

  it('has its horizon at 4.12 times the root of the height', () => {
    expect(radioHorizonKm(1.5) + radioHorizonKm(30)).toBeCloseTo(27.633, 3);
    expect(radioHorizonKm(2) + radioHorizonKm(100)).toBeCloseTo(47.062, 3);
  });

  it('grows by a third in the median atmosphere (P.1812 eqs 6 and 7a)', () => {
    expect(effectiveEarthRadiusKm(39.25)).toBeCloseTo(8494.67, 2);
    expect(effectiveEarthRadiusKm(45)).toBeCloseTo(8930.78, 2);
  });
});
