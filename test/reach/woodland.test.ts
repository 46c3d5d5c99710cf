import { describe, expect, it } from 'vitest';
import {
  deepestWoodlandLossDb,
  depthUnderTreesM,
  specificAttenuationDb,
  woodlandLossDb,
} from '../../src/reach/woodland.ts';

describe('woodland (ITU-R P.833-10 §2.1)', () => {
  // Table 1, measured near St Petersburg, mixed wood 12 to 16 m high, antenna 1.5 m: MHz and greatest loss, dB. The fit A1 = 1.37,
  // alpha = 0.42 stands beside it and comes within 3.3 dB of each.
  it.each([
    [105.9, 9.4],
    [466.475, 18],
    [949, 26.5],
    [1852.2, 29],
    [2117.5, 34.1],
  ])('takes at most about what was measured at %f MHz', (mhz, measuredDb) => {
    expect(Math.abs(deepestWoodlandLossDb(mhz * 1e6) - measuredDb)).toBeLessThan(3.4);
  });

  // Equation (1) worked with those constants; the specific attenuation of the table is from memory.
  it.each([
    [146, 11.11, 0.0507, 100, 4.07],
    [222, 13.25, 0.0692, 200, 8.59],
    [446, 17.76, 0.1161, 100, 8.52],
    [446, 17.76, 0.1161, 500, 17.08],
  ])('at %d MHz: at most %f dB, %f dB/m, %d m take %f dB', (mhz, mostDb, perMetre, depthM, lossDb) => {
    expect(deepestWoodlandLossDb(mhz * 1e6)).toBeCloseTo(mostDb, 2);
    expect(specificAttenuationDb(mhz * 1e6)).toBeCloseTo(perMetre, 4);
    expect(woodlandLossDb(mhz * 1e6, depthM)).toBeCloseTo(lossDb, 1);
  });

  it('costs nothing without trees, and never more than its ceiling', () => {
    expect(woodlandLossDb(146e6, 0)).toBe(0);
    expect(woodlandLossDb(146e6, 100_000)).toBeCloseTo(deepestWoodlandLossDb(146e6), 6);
  });

  it('is short for a path that leaves steeply, and long for a level one', () => {
    // Trees of 15 m around an antenna at 1.5 m: at 30 degrees the path is out after 13.5 / sin 30 = 27 m.
    expect(depthUnderTreesM(15, 1.5, Math.PI / 6)).toBeCloseTo(27, 6);
    expect(depthUnderTreesM(15, 1.5, 0)).toBe(200);
    expect(depthUnderTreesM(15, 20, 0)).toBe(0);
  });
});
