import { describe, expect, it } from 'vitest';
import { averagePowerW, exposure, powerDensityWm2 } from '../../src/reach/exposure.ts';
import { publishedDensities, publishedDistances } from '../sources/reach/exposure-distances.ts';

const transmitter = { carried: 'mast', powerW: 50, gainDbi: 3, feedLossDb: 0, frequencyHz: 146e6 } as const;

function distances(over: Partial<Parameters<typeof exposure>[0]>, rules: 'fcc' | 'icnirp' = 'fcc') {
  const answer = exposure({ ...transmitter, ...over }, rules);
  if (answer.kind !== 'distance') throw new Error(answer.kind);
  return answer;
}

describe('distance to keep from an antenna (47 CFR 1.1310, OET Bulletin 65)', () => {
  it.each(publishedDistances)('at $mhz MHz, $powerW W and $gainDbi dBi is the published one', (row) => {
    const answer = distances({
      frequencyHz: row.mhz * 1e6,
      powerW: row.powerW,
      gainDbi: row.gainDbi,
      reflection: row.reflection,
    });
    // The moonbounce table is cut to whole feet, so that its figure may be up to a foot short.
    expect(Math.abs(answer.occupational.formulaM - row.occupationalM)).toBeLessThan(row.withinM);
    if ('publicM' in row) expect(Math.abs(answer.public.formulaM - row.publicM)).toBeLessThan(row.withinM);
  });

  // Worked with the bulletin's formula and the table of 1.1310.
  it.each([
    [146, 50, 6, 2.014, 4.503],
    [446, 35, 3, 0.978, 2.187],
    [462.55, 50, 6, 1.622, 3.626],
    [50.1, 100, 2.15, 1.828, 4.088],
    [28.4, 100, 2.15, 1.731, 3.87],
    [151.82, 2, 2.15, 0.259, 0.578],
    [27.185, 4, 2.15, 0.331, 0.741],
  ])('at %f MHz, %d W, %f dBi is %f m and %f m', (mhz, powerW, gainDbi, occupationalM, publicM) => {
    const answer = distances({ frequencyHz: mhz * 1e6, powerW, gainDbi });
    expect(answer.occupational.formulaM).toBeCloseTo(occupationalM, 3);
    expect(answer.public.formulaM).toBeCloseTo(publicM, 3);
  });

  it.each(publishedDensities)(
    'gives the density filed for $powerW W at $mhz MHz',
    ({ mhz, powerW, gainDbi, mwCm2 }) => {
      const found = powerDensityWm2(
        { ...transmitter, frequencyHz: mhz * 1e6, powerW, gainDbi, reflection: 'none' },
        0.2,
      );
      expect(found / 10).toBeCloseTo(mwCm2, 5);
    },
  );

  it("gives the bulletin's own example: 10 kW ERP at 100 MHz leave 145 microwatts per square centimetre at 48 m", () => {
    // From memory of the bulletin; its constant 33.4 stands for 1.64 x 2.56 x 100 / (4 pi).
    const found = powerDensityWm2(
      { ...transmitter, powerW: 10_000 * 1.64, gainDbi: 0, frequencyHz: 100e6 },
      48,
    );
    expect(found * 100).toBeCloseTo(145, 0);
  });

  it('is never given for a radio at the body', () => {
    for (const carried of ['hand', 'chest', 'belt'] as const) {
      const answer = exposure({ ...transmitter, carried, powerW: 5 }, 'fcc');
      expect(answer).toMatchObject({ kind: 'at the body', caution: expect.stringContaining('SAR') });
      expect(JSON.stringify(answer)).not.toMatch(/keepM|formulaM/);
    }
  });

  it("is never less than the near field or a hand's breadth", () => {
    const weak = distances({ powerW: 0.1, gainDbi: 0 });
    expect(weak.public.formulaM).toBeLessThan(0.2);
    // 47.7 / f: FCC 19-126, footnote 143.
    expect(weak.public.keepM).toBeCloseTo(47.7 / 146, 2);
    expect(distances({ powerW: 0.1, gainDbi: 0, frequencyHz: 900e6 }).public.keepM).toBe(0.2);
  });

  it('shrinks with the time on the air, as power does', () => {
    // Supplement B: 500 W of CW, 45 seconds in every 6 minutes, count as 25 W.
    expect(averagePowerW({ powerW: 500, dutyFactor: 0.4, transmitShare: 45 / 360 })).toBeCloseTo(25, 9);
    expect(distances({ transmitShare: 0.25 }).public.formulaM).toBeCloseTo(
      distances({}).public.formulaM / 2,
      9,
    );
  });

  it('has limits elsewhere too, marked as remembered (ICNIRP 2020, table 5)', () => {
    const answer = distances({ frequencyHz: 446e6 }, 'icnirp');
    expect(answer.public.limit.source.fromMemory).toBe(true);
    expect(answer.public.limit.densityWm2).toBeCloseTo(446 / 200, 9);
    expect(distances({}, 'icnirp').public.formulaM).toBeCloseTo(distances({}).public.formulaM, 9);
  });
});
