import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  carsonBandwidthHz,
  formatBandwidth,
  formatEmission,
  parseBandwidth,
  parseEmission,
  usualEmission,
  widestSpacingHz,
} from '../../src/radio/emission.ts';
import { bandwidthExamples, telephonyExamples } from '../sources/emission-designators.ts';

test.each(bandwidthExamples)('%d Hz is written %s', (bandwidthHz, text) => {
  expect(formatBandwidth(bandwidthHz)).toBe(text);
});

test.each(telephonyExamples)(
  'voice to %d Hz at ±%d Hz takes %d Hz: %s',
  (highest, deviation, width, text) => {
    expect(carsonBandwidthHz(deviation, highest)).toBe(width);
    expect(formatEmission({ bandwidthHz: width, modulation: 'F', signal: '3', information: 'E' })).toBe(text);
    expect(parseEmission(text)).toEqual({
      bandwidthHz: width,
      modulation: 'F',
      signal: '3',
      information: 'E',
    });
  },
);

test('single sideband and Morse are read', () => {
  // ITU-R SM.1138, worked examples.
  expect(parseEmission('2K70J3E')).toEqual({
    bandwidthHz: 2700,
    modulation: 'J',
    signal: '3',
    information: 'E',
  });
  expect(parseEmission('100HA1A')).toEqual({
    bandwidthHz: 100,
    modulation: 'A',
    signal: '1',
    information: 'A',
  });
  expect(parseEmission('16K0F3EJN')).toMatchObject({ details: 'JN' });
});

test.each([
  '',
  '16K0',
  '16K0F3',
  'K160F3E',
  '016KF3E',
  '16000F3E',
  '16K0Z3E',
  '16K0F4E',
  '16K0F3Z',
  'M100F3E',
  '1K6K0F3E',
  '1600F3E',
  'H000A1A',
])('%j is no designator', (text) => {
  expect(parseEmission(text)).toBeUndefined();
});

test('the usual designators of FM voice and packet at each spacing', () => {
  const written = (mode: 'fm' | 'packet', spacing: number) => {
    const emission = usualEmission(mode, spacing);
    return emission && formatEmission(emission);
  };
  expect([25_000, 20_000, 12_500].map((spacing) => written('fm', spacing))).toEqual([
    '16K0F3E',
    '14K0F3E',
    '11K0F3E',
  ]);
  // 2 × (5 + 2.2) kHz and 2 × (2.5 + 2.2) kHz: the upper tone of a Bell 202 modem at full deviation.
  expect([25_000, 12_500].map((spacing) => written('packet', spacing))).toEqual(['14K4F2D', '9K40F2D']);
  // 47 CFR 95.973 and 95.975(c): FM of the 27 MHz citizens' band, 8 kHz wide at a deviation of at most 2 kHz.
  expect([10_000, 8_000].map((spacing) => written('fm', spacing))).toEqual(['8K00F3E', '8K00F3E']);
  expect(written('fm', 8330)).toBeUndefined();
  expect([16_000, 12_000, 8_000, 7_999].map((limit) => widestSpacingHz('fm', limit))).toEqual([
    25_000,
    12_500,
    10_000,
    undefined,
  ]);
});

test('a bandwidth that cannot be written is our own fault', () => {
  for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e12])
    expect(() => formatBandwidth(bad)).toThrow(RangeError);
});

test('a written bandwidth is read back within its three digits', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999_000_000 }), (hz) => {
      const back = parseBandwidth(formatBandwidth(hz)) ?? 0;
      expect(Math.abs(back - hz) / hz).toBeLessThanOrEqual(0.005);
      expect(formatBandwidth(back)).toBe(formatBandwidth(hz));
    }),
  );
});
