import fc from 'fast-check';
import { expect, test } from 'vitest';
import { visibleText } from '../../src/findings/visible-text.ts';

// Code points and properties: The Unicode Standard, chapters 23.1 (control codes) and 23.2 (layout controls).
test('an escape sequence in a plan shows itself and does nothing', () => {
  expect(visibleText('\u001b[31mred\u0007')).toBe('␛[31mred␇');
  expect(visibleText('a\u0000b\u007fc\u009bd')).toBe('a␀b␡c<U+009B>d');
  expect(visibleText('one\r\ntwo')).toBe('one␍␊two');
});

test('characters that turn or hide text are named', () => {
  expect(visibleText('146\u202e049')).toBe('146<U+202E>049');
  expect(visibleText('a\u200bb\ufeff')).toBe('a<U+200B>b<U+FEFF>');
});

test('half a surrogate pair is shown as a replacement, a whole one is kept', () => {
  expect(visibleText('\ud83d')).toBe('\ufffd');
  expect(visibleText('📻 Łódź')).toBe('📻 Łódź');
});

test('no control character is ever left', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(visibleText(text)).not.toMatch(/[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069]/u);
    }),
  );
});
