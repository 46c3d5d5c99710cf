import { expect, test } from 'vitest';
import {
  formatDecibels,
  formatDistance,
  formatDuration,
  formatFrequency,
  formatGain,
  formatLength,
  formatLevel,
  formatOffset,
  formatPower,
  formatRatio,
  formatSpacing,
} from '../../src/radio/format-quantity.ts';

// No published standard fixes these; they are the forms the plan language shows, and SI spacing of number and unit.
test('a frequency shows three decimals, and more only where it needs them', () => {
  expect(formatFrequency(146_940_000)).toBe('146.940');
  expect(formatFrequency(446_006_250)).toBe('446.00625');
  expect(formatFrequency(462_712_500)).toBe('462.7125');
  expect(formatFrequency(7_100_001)).toBe('7.100001');
  expect(formatFrequency(475_000)).toBe('0.475');
});

test('an offset shows its direction', () => {
  expect(formatOffset(-600_000)).toBe('-0.6 MHz');
  expect(formatOffset(5_000_000)).toBe('+5 MHz');
  expect(formatOffset(-7_600_000)).toBe('-7.6 MHz');
  expect(formatOffset(0)).toBe('0 MHz');
});

test('a fraction of a hertz is our own fault and is thrown', () => {
  expect(() => formatFrequency(146_940_000.5)).toThrow(RangeError);
  expect(() => formatOffset(Number.NaN)).toThrow(RangeError);
});

test('powers, lengths and spacings take the prefix people use', () => {
  expect(formatPower(0.07)).toBe('70 mW');
  expect(formatPower(0.5)).toBe('500 mW');
  expect(formatPower(5)).toBe('5 W');
  expect(formatPower(1500)).toBe('1.5 kW');
  expect(formatLength(1.5)).toBe('1.5 m');
  expect(formatLength(-3)).toBe('-3 m');
  expect(formatSpacing(12_500)).toBe('12.5 kHz');
  expect(formatSpacing(8_330)).toBe('8.33 kHz');
});

test('a time is written in the largest unit that holds it whole', () => {
  expect([0, 90, 300, 5400, 43_200, 86_400, 172_800].map(formatDuration)).toEqual([
    '0 min',
    '90 s',
    '5 min',
    '90 min',
    '12 h',
    '24 h',
    '2 d',
  ]);
});

test('decibels and distances are rounded to what they mean', () => {
  expect(formatGain(-2.8500000000000001)).toBe('-2.85 dBi');
  expect(formatGain(2)).toBe('2 dBi');
  expect(formatLevel(-119.0282)).toBe('-119 dBm');
  expect(formatLevel(-0.01)).toBe('0 dBm');
  expect(formatDecibels(10)).toBe('10 dB');
  expect(formatDistance(849.6)).toBe('850 m');
  expect(formatDistance(999.7)).toBe('1 km');
  expect(formatDistance(12_345)).toBe('12.3 km');
  expect(formatDistance(140_400)).toBe('140 km');
  expect(formatRatio(0.125)).toBe('12.5 %');
});
