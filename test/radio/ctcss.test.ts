import { expect, test } from 'vitest';
import {
  ctcssTones,
  decoderResponseS,
  mainsHarmonicNear,
  nearestTone,
  separationPercent,
  standardTone,
} from '../../src/radio/ctcss.ts';
import { publishedTones, starredTones } from '../sources/ctcss-tones.ts';

test('the tones, their sets and their groups are those of the published table', () => {
  const ours = ctcssTones.map((tone) => [(tone.tenthsHz / 10).toFixed(1), tone.set, tone.group ?? '']);
  expect(ours).toEqual(publishedTones.map((row) => [...row]));
});

test('the three sets hold 38, 42 and 50 tones', () => {
  const within = (set: number) => ctcssTones.filter((tone) => tone.set <= set).length;
  expect([within(38), within(42), within(50)]).toEqual([38, 42, 50]);
});

test('within group A or B no two tones are closer than seven per cent', () => {
  for (const group of ['A', 'B'] as const) {
    const tones = ctcssTones.filter((tone) => tone.group === group).map((tone) => tone.tenthsHz);
    for (const [index, tone] of tones.slice(1).entries()) {
      expect(separationPercent(tones[index] ?? 0, tone)).toBeGreaterThan(7);
    }
  }
});

test('a tone that is off by a slip is told its nearest standard one', () => {
  // 69.4 is printed in one public table for the tone all others give as 69.3.
  expect(nearestTone(694).tenthsHz).toBe(693);
  expect(nearestTone(1031).tenthsHz).toBe(1035);
  expect(nearestTone(10).tenthsHz).toBe(670);
  expect(nearestTone(9999).tenthsHz).toBe(2541);
  expect(standardTone(694)).toBeUndefined();
  expect(standardTone(1000)).toMatchObject({ set: 38, group: 'A', letters: '1Z' });
});

test('every tone starred in print for mains hum is found close to a harmonic of 50 or 60 Hz', () => {
  for (const text of starredTones) {
    const tenths = Math.round(Number(text) * 10);
    expect(mainsHarmonicNear(tenths, 50) ?? mainsHarmonicNear(tenths, 60), text).toBeDefined();
  }
  expect(mainsHarmonicNear(1000, 50)).toEqual({ order: 2, frequencyHz: 100, differencePercent: 0 });
  expect(mainsHarmonicNear(1000, 60)).toBeUndefined();
  expect(mainsHarmonicNear(1799, 60)?.differencePercent).toBeCloseTo(-0.06, 2);
});

test('the lowest tones take the decoder longest', () => {
  // 250 ms from 100 Hz up, 373 ms at 67.0 Hz (EIA RS-220 and TIA-603, from memory).
  expect(decoderResponseS(1000)).toBe(0.25);
  expect(decoderResponseS(2503)).toBe(0.25);
  expect(decoderResponseS(670)).toBeCloseTo(0.373, 3);
});
