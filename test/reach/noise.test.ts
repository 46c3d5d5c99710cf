import { describe, expect, it } from 'vitest';
import { dbmOfMicrovolts } from '../../src/reach/decibels.ts';
import {
  externalNoiseDb,
  galacticNoiseDb,
  manMadeNoiseDb,
  noisePowerDbm,
  noiseSpreadDb,
} from '../../src/reach/noise.ts';

describe('noise from outside (ITU-R P.372-10, tables 1 and 2)', () => {
  it.each([
    ['city', 50, 29.74, -103.27],
    ['residential', 50, 25.44, -107.57],
    ['rural', 50, 20.14, -112.87],
    ['city', 146, 16.85, -116.16],
    ['residential', 146, 12.55, -120.46],
    ['rural', 146, 7.25, -125.76],
    ['quiet-rural', 146, -8.3, -141.31],
    ['rural', 222, 2.21, -130.8],
    ['rural', 446, -6.19, -139.19],
  ] as const)('in a %s place at %d MHz is %f dB, %f dBm in 12.5 kHz', (place, mhz, figureDb, powerDbm) => {
    expect(manMadeNoiseDb(place, mhz * 1e6)).toBeCloseTo(figureDb, 2);
    // The printed constant -174.0 rounds -173.975.
    expect(Math.abs(noisePowerDbm(manMadeNoiseDb(place, mhz * 1e6), 12_500) - powerDbm)).toBeLessThan(0.05);
  });

  it('in a residential place at 146 MHz is -119.39 dBm in 16 kHz', () => {
    // The printed constant -174.0 rounds -173.975.
    expect(Math.abs(noisePowerDbm(manMadeNoiseDb('residential', 146e6), 16_000) + 119.39)).toBeLessThan(0.03);
  });

  it('is galactic where nothing is made by people', () => {
    expect(galacticNoiseDb(50e6)).toBeCloseTo(12.92, 2);
    expect(externalNoiseDb('quiet-rural', 146e6)).toBeCloseTo(galacticNoiseDb(146e6), 6);
  });

  it('adds as powers and never falls below that of warm ground', () => {
    expect(externalNoiseDb('rural', 146e6)).toBeCloseTo(10 * Math.log10(10 ** 0.725 + 10 ** 0.222), 1);
    expect(externalNoiseDb('quiet-rural', 446e6)).toBe(0);
  });

  it('reckons thermal noise as -133.0 dBm in 12.5 kHz at 290 K', () => {
    expect(noisePowerDbm(0, 12_500)).toBeCloseTo(-133, 1);
    expect(noisePowerDbm(0, 16_000)).toBeCloseTo(-131.9, 1);
  });

  it('spreads by its deciles', () => {
    expect(noiseSpreadDb('rural')).toBeCloseTo((9.2 + 4.6) / 2 / 1.2816, 6);
  });
});

describe('microvolts at a socket of 50 ohm', () => {
  it.each([
    [0.16, -122.9],
    [0.2, -121],
    [0.25, -119],
    [0.35, -116.1],
    [0.5, -113],
    [1, -107],
  ])('%f are %f dBm', (microvolts, dbm) => {
    expect(dbmOfMicrovolts(microvolts)).toBeCloseTo(dbm, 1);
  });
});
