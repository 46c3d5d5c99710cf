import { magvar } from 'magvar';
import { describe, expect, it } from 'vitest';
import { magneticDeclination } from '../../src/reach/declination.ts';
import { declinations, furtherDeclinations } from '../sources/reach/declinations.ts';

describe('magnetic declination', () => {
  it.each(declinations)(
    'gives the test row %f, %f km, %f, %f',
    async (year, heightKm, latitudeDeg, longitudeDeg, h, decl) => {
      // 2027.5 is noon on 2 July; half a day moves no row by more than 0.001 degrees.
      const date = year === 2025 ? '2025-01-01' : '2027-07-02';
      const answer = await magneticDeclination({ latitudeDeg, longitudeDeg }, date, heightKm * 1000);
      expect(answer.ok).toBe(true);
      if (!answer.ok) return;
      expect(Math.abs(answer.declinationDeg - decl)).toBeLessThan(0.01);
      // WMM2025 report: 0.26 and 5417/H added in squares.
      expect(answer.uncertaintyDeg).toBeCloseTo(Math.sqrt(0.26 ** 2 + (5417 / h) ** 2), 2);
    },
  );

  it.each(furtherDeclinations)(
    'gives the further test row %s, %f km, %f, %f',
    async (date, heightKm, latitudeDeg, longitudeDeg, decl) => {
      const answer = await magneticDeclination({ latitudeDeg, longitudeDeg }, date, heightKm * 1000);
      // Next to the pole, where D changes by degrees within a day's drift of it, the half day between the dates shows.
      const within = latitudeDeg > 85 ? 0.02 : 0.01;
      expect(answer.ok && Math.abs(answer.declinationDeg - decl)).toBeLessThan(within);
    },
  );

  it('agrees with another implementation of the model where people live', async () => {
    // npm magvar 2.2.0, which rounds to 0.01 degrees and takes the day of the year for the date.
    for (const [latitudeDeg, longitudeDeg] of [
      [36.6, -84.25],
      [47.6, -122.3],
      [51.5, -0.13],
      [-41.3, 174.7],
    ] as const) {
      const answer = await magneticDeclination({ latitudeDeg, longitudeDeg }, '2026-12-01');
      expect(answer.ok && answer.declinationDeg).toBeCloseTo(
        magvar(latitudeDeg, longitudeDeg, 0, new Date('2026-12-01T00:00:00Z')),
        1,
      );
    }
  });

  it('says so when no model covers the date', async () => {
    const answer = await magneticDeclination({ latitudeDeg: 36.6, longitudeDeg: -84.25 }, '2031-01-01');
    expect(answer).toMatchObject({ ok: false, reason: expect.stringContaining('2029-11-13') });
    expect(await magneticDeclination({ latitudeDeg: 0, longitudeDeg: 0 }, 'next spring')).toMatchObject({
      ok: false,
    });
    expect(await magneticDeclination({ latitudeDeg: 0, longitudeDeg: 0 }, '1990-01-01')).toMatchObject({
      ok: false,
    });
  });
});
