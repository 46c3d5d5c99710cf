import { expect, test } from 'vitest';
import { formatCallSign, parseCallSign } from '../../src/radio/call-sign.ts';
import { invalidCallSigns, validCallSigns } from '../sources/call-signs.ts';

test.each(validCallSigns)('%s follows the pattern of the Radio Regulations', (text) => {
  expect(parseCallSign(text)).toEqual({ ok: true, value: { base: text } });
});

test.each(invalidCallSigns)('%s is refused: %s', (text) => {
  const reading = parseCallSign(text);
  expect(reading.ok ? reading.value : reading.message).toMatch(
    /^".*(call sign|holds).*\.$|^A call sign has no spaces/,
  );
});

test('small letters are taken for capitals', () => {
  expect(parseCallSign(' kx4xwe ')).toEqual({ ok: true, value: { base: 'KX4XWE' } });
});

test('a visitor puts a prefix before the stroke and a portable station a letter after it', () => {
  expect(parseCallSign('VE3/KX4XWE/P')).toEqual({
    ok: true,
    value: { base: 'KX4XWE', visiting: 'VE3', suffix: 'P' },
  });
  for (const text of ['KX4XWE/P', 'KX4XWE/4', 'F/KX4XWE', 'KX4XWE/MM']) {
    const reading = parseCallSign(text);
    expect(reading.ok && formatCallSign(reading.value)).toBe(text);
  }
  for (const text of ['KX4XWE/', '/KX4XWE', 'KX4XWE/P/M', 'A/B/KX4XWE', 'KX4XWE/PORTABLE', 'KX4XWE/P/M/X']) {
    expect(parseCallSign(text).ok, text).toBe(false);
  }
});

test('what was meant is offered where it can be told', () => {
  expect(parseCallSign('KX4XWE-10')).toMatchObject({ suggestion: 'KX4XWE' });
  expect(parseCallSign('KX4 XWE')).toMatchObject({ suggestion: 'KX4XWE' });
});

test('a call sign that begins with Q is refused for its Q', () => {
  for (const text of ['Q1XBC', 'QA1XBC']) {
    expect(parseCallSign(text)).toMatchObject({
      ok: false,
      message: expect.stringContaining('kept for the Q codes'),
    });
  }
});
