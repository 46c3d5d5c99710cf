import { describe, expect, it } from 'vitest';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';
import { sphericalEarthLossDb } from '../../src/reach/spherical-earth.ts';

/** Loss between two antennas over flat ground sampled every ten metres, free space included. */
function flatLossDb(frequencyMhz: number, startM: number, endM: number, distanceKm: number): number {
  const distancesKm = Array.from({ length: Math.round(distanceKm * 100) + 1 }, (_, index) => index / 100);
  const { lossDb } = diffractionLoss({
    distancesKm,
    heightsM: distancesKm.map(() => 0),
    startAntennaM: startM,
    endAntennaM: endM,
    frequencyHz: frequencyMhz * 1e6,
    polarization: 'vertical',
  });
  return lossDb + freeSpaceLossDb(frequencyMhz * 1e6, distanceKm * 1000);
}

describe('low antennas over open ground', () => {
  // Plane earth: 40 log d - 20 log(h1 h2), in metres (textbook two-ray result). The method comes within 4 dB of it between hand-helds at
  // 146 and 446 MHz to 10 km without any height gain on top.
  it.each([
    [146, 1.5, 1.5, 0.25],
    [146, 1.5, 1.5, 1],
    [146, 1.5, 1.5, 5],
    [146, 1.5, 1.5, 10],
    [146, 1.5, 10, 1],
    [146, 1.5, 10, 5],
    [446, 1.5, 1.5, 1],
    [446, 1.5, 10, 10],
  ])(
    'lose about the plane-earth loss at %d MHz, %f and %f m, %f km',
    (frequencyMhz, startM, endM, distanceKm) => {
      const planeEarthDb = 40 * Math.log10(distanceKm * 1000) - 20 * Math.log10(startM * endM);
      expect(Math.abs(flatLossDb(frequencyMhz, startM, endM, distanceKm) - planeEarthDb)).toBeLessThan(4);
    },
  );

  // Two implementations written apart, each reproducing the published ITU-R examples, gave these (0.1 dB).
  it.each([
    [146, 1.5, 1.5, 1, 110.2],
    [146, 1.5, 10, 5, 123.0],
    [146, 1.5, 30, 20, 140.2],
    [446, 1.5, 1.5, 5, 140.0],
    [446, 1.5, 10, 20, 152.6],
    [50, 1.5, 1.5, 10, 134.2],
  ])(
    'lose at %d MHz between %f and %f m over %f km %f dB in all',
    (frequencyMhz, startM, endM, distanceKm, lossDb) => {
      expect(flatLossDb(frequencyMhz, startM, endM, distanceKm)).toBeCloseTo(lossDb, 1);
    },
  );
});

describe('a smooth earth', () => {
  const path = {
    distanceKm: 30,
    startM: 10,
    endM: 10,
    frequencyMhz: 146,
    wavelengthM: 2.0534,
    polarization: 'vertical',
    earthRadiusKm: 8500,
    seaShare: 0,
    form: 'p1812',
  } as const;

  it('costs less across the sea than across the land at low frequencies and vertical polarisation', () => {
    const overLand = sphericalEarthLossDb({ ...path, frequencyMhz: 30, wavelengthM: 9.993 });
    expect(sphericalEarthLossDb({ ...path, frequencyMhz: 30, wavelengthM: 9.993, seaShare: 1 })).toBeLessThan(
      overLand,
    );
  });

  it('costs more beyond the horizon than at it, and nothing between high antennas', () => {
    expect(sphericalEarthLossDb({ ...path, distanceKm: 60 })).toBeGreaterThan(sphericalEarthLossDb(path));
    expect(sphericalEarthLossDb({ ...path, startM: 500, endM: 500 })).toBe(0);
  });
});
