import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatTone, isStandardTone, parseTone, sameSignal, type Tone } from '../../src/radio/tone.ts';
import { publishedTones } from '../sources/ctcss-tones.ts';
import { dcsPairs } from '../sources/dcs-pairs.ts';

function tone(text: string | number): Tone | undefined {
  const reading = parseTone(text);
  return reading.ok ? reading.value : undefined;
}

function complaintAbout(text: string | number): string {
  const reading = parseTone(text);
  return reading.ok ? `read as ${formatTone(reading.value)}` : reading.message;
}

test.each(publishedTones)('the standard tone %s is read and written back', (text) => {
  const read = tone(text);
  expect(read && formatTone(read)).toBe(text);
  expect(read && isStandardTone(read)).toBe(true);
});

test('a tone may come without its decimal, with its unit, or as the number YAML made of it', () => {
  for (const text of ['100', '100.0', '100.00', '100.0 Hz', 100]) {
    expect(tone(text)).toEqual({ kind: 'ctcss', tenthsHz: 1000 });
  }
  expect(tone(141.3)).toEqual({ kind: 'ctcss', tenthsHz: 1413 });
  expect(tone('77')).toEqual({ kind: 'ctcss', tenthsHz: 770 });
});

test('a digital code carries its letter and its sense', () => {
  expect(tone('D023N')).toEqual({ kind: 'dcs', code: '023', inverted: false });
  expect(tone('d754i')).toEqual({ kind: 'dcs', code: '754', inverted: true });
  expect(complaintAbout('D023')).toContain('normal or inverted');
  expect(complaintAbout('D089N')).toContain('octal');
  expect(complaintAbout('D23N')).toContain('three octal digits');
  expect(parseTone('023N')).toMatchObject({ ok: false, suggestion: 'D023N' });
});

test('a bare 023 is refused, because YAML reads it as the number 23', () => {
  expect(complaintAbout('023')).toContain('YAML reads a bare 023 as the number 23');
  expect(parseTone('023')).toMatchObject({ suggestion: 'D023N' });
  expect(complaintAbout(23)).toContain('D023N or D023I');
  expect(complaintAbout(19)).toMatch(/60 and 300|D0/);
});

test('a bare 131 could be a code or a tone, and neither is guessed', () => {
  expect(complaintAbout('131')).toBe(
    '131 could be a digital code or a CTCSS tone; write D131N, D131I, or the tone to a tenth, such as 131.8.',
  );
});

test('a tone that is no standard one is read, for a check to judge', () => {
  const odd = tone('103.1');
  expect(odd).toEqual({ kind: 'ctcss', tenthsHz: 1031 });
  expect(odd && isStandardTone(odd)).toBe(false);
});

test.each([
  '',
  'tone',
  '1O0.0',
  '-100',
  '100.05',
  '30.0',
  '1000',
  '146.940',
  'D',
  'DN',
  'D0230N',
  '9'.repeat(300),
])('%j is no tone', (text) => {
  expect(complaintAbout(text)).toMatch(/\.$/);
  expect(tone(text)).toBeUndefined();
});

test.each(dcsPairs)('%s normal and %s inverted open the same squelch', (normal, inverted) => {
  expect(sameSignal(tone(`D${normal}N`), tone(`D${inverted}I`))).toBe(true);
  expect(sameSignal(tone(`D${normal}N`), tone(`D${normal}I`))).toBe(false);
});

test('no tone is the same only as no tone', () => {
  expect(sameSignal(undefined, undefined)).toBe(true);
  expect(sameSignal(tone('100.0'), undefined)).toBe(false);
  expect(sameSignal(tone('100.0'), tone('103.5'))).toBe(false);
  expect(sameSignal(tone('100.0'), tone('D023N'))).toBe(false);
});

test('every tone that can be written is read back as itself', () => {
  const ctcss = fc.integer({ min: 600, max: 3000 }).map((tenthsHz): Tone => ({ kind: 'ctcss', tenthsHz }));
  const dcs = fc
    .tuple(fc.integer({ min: 0, max: 511 }), fc.boolean())
    .map(([code, inverted]): Tone => ({ kind: 'dcs', code: code.toString(8).padStart(3, '0'), inverted }));
  fc.assert(
    fc.property(fc.oneof(ctcss, dcs), (any) => {
      expect(tone(formatTone(any))).toEqual(any);
      expect(sameSignal(any, any)).toBe(true);
    }),
  );
});

test('a very long text is refused as fast as a short one', () => {
  const started = performance.now();
  expect(tone(`1${' '.repeat(300_000)}x`)).toBeUndefined();
  expect(performance.now() - started).toBeLessThan(500);
});
