import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  formatCurrent,
  formatDuration,
  formatEnergy,
  formatFrequency,
  formatLength,
  formatOffset,
  formatPower,
  formatSpacing,
  formatVoltage,
} from '../../src/radio/format-quantity.ts';
import { type Dimension, readQuantity } from '../../src/radio/quantity.ts';
import { writtenQuantities } from '../sources/written-quantities.ts';

function valueRead(text: string | number, dimension: Dimension): number | undefined {
  const reading = readQuantity(text, dimension);
  return reading.ok ? reading.value : undefined;
}

function complaintAbout(text: string | number, dimension: Dimension): string {
  const reading = readQuantity(text, dimension);
  return reading.ok ? `read as ${reading.value}` : reading.message;
}

test.each(writtenQuantities)('a %s written %s is read by its unit', (dimension, text, value, tolerance) => {
  const read = valueRead(text, dimension);
  if (value === undefined || tolerance === 0) expect(read).toBe(value);
  else expect(Math.abs((read ?? Number.NaN) - value)).toBeLessThanOrEqual(tolerance);
});

test('a number YAML has already read is taken like its text', () => {
  expect(valueRead(146.94, 'frequency')).toBe(146_940_000);
  expect(valueRead(-0.6, 'frequencyOffset')).toBe(-600_000);
});

test('a frequency finer than one hertz is refused, not rounded', () => {
  expect(complaintAbout('146.9400005', 'frequency')).toContain('finer than 1 Hz');
  expect(valueRead('146.9400000', 'frequency')).toBe(146_940_000);
});

test('a unit that measures something else is refused with the units that fit', () => {
  const reading = readQuantity('5 kHz', 'power');
  expect(reading).toEqual({
    ok: false,
    message: 'A power is written in W, mW or kW, not in "kHz".',
    fits: ['W', 'mW', 'kW'],
  });
});

test('a megawatt is not taken for a milliwatt', () => {
  expect(valueRead('5 MW', 'power')).toBeUndefined();
});

test('a bare antenna gain is refused, because dBi and dBd differ by 2.15 dB', () => {
  expect(complaintAbout('3', 'gain')).toBe('An antenna gain needs its unit, dBi or dBd; "3" has none.');
  expect(complaintAbout('-119', 'level')).toContain('dBm or uV');
});

test('a decimal comma is met with words, not read as thousands', () => {
  expect(complaintAbout('146,940', 'frequency')).toContain('a point, not a comma');
});

test('a clock-like length of time is refused, because it could be minutes or hours', () => {
  expect(complaintAbout('1:30', 'duration')).toContain('minutes or hours');
});

test('no power, no frequency and no negative height, but an elevation may lie below the sea', () => {
  expect(complaintAbout('0 W', 'power')).toContain('more than zero');
  expect(complaintAbout('0', 'frequency')).toContain('more than zero');
  expect(complaintAbout('-3 m', 'length')).toContain('not negative');
  expect(readQuantity('-3 m', 'length', { negative: true })).toEqual({ ok: true, value: -3 });
});

test.each([
  '',
  ' ',
  '.',
  '-',
  '+-5',
  '1.2.3',
  'NaN',
  'Infinity',
  '1e3',
  '5 W W',
  '0x10',
  '9'.repeat(400),
  '__proto__',
  '5 constructor',
])('the text %j is no power and is answered by a sentence', (text) => {
  expect(complaintAbout(text, 'power')).toMatch(/^A power .*\.$/);
});

test('no text at all makes the reader throw', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary' }),
      fc.constantFrom<Dimension>('frequency', 'level', 'ratio'),
      (text, dimension) => {
        const reading = readQuantity(text, dimension);
        expect(reading.ok ? Number.isFinite(reading.value) : reading.fits.length > 0).toBe(true);
      },
    ),
  );
});

test('a written frequency, offset or spacing is read back as the same hertz', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300_000_000_000 }), (hz) => {
      expect(valueRead(formatFrequency(hz), 'frequency')).toBe(hz);
      expect(valueRead(formatSpacing(hz), 'spacing')).toBe(hz);
      expect(valueRead(formatOffset(hz), 'frequencyOffset')).toBe(hz);
      expect(valueRead(formatOffset(-hz), 'frequencyOffset')).toBe(-hz);
    }),
  );
});

test('a written power, length, time, energy, current or voltage is read back as the same number', () => {
  const positive = fc.double({ min: 1e-6, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(positive, (value) => {
      expect(valueRead(formatPower(value), 'power')).toBe(value);
      expect(valueRead(formatLength(value), 'length')).toBe(value);
      expect(valueRead(formatDuration(value), 'duration')).toBe(value);
      expect(valueRead(formatEnergy(value), 'energy')).toBe(value);
      expect(valueRead(formatCurrent(value), 'current')).toBe(value);
      expect(valueRead(formatVoltage(value), 'voltage')).toBe(value);
    }),
  );
});
