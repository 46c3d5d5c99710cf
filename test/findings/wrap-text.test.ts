import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { wrapText } from '../../src/findings/wrap-text.ts';

test('a sentence is broken at spaces, by the width its characters have on the screen', () => {
  expect(wrapText('one two three', 7, stringWidth)).toEqual(['one two', 'three']);
  // East Asian wide characters take two columns each (Unicode Standard Annex 11).
  expect(wrapText('無線 無線 無線', 9, stringWidth)).toEqual(['無線 無線', '無線']);
});

test('a word wider than the line stays whole', () => {
  expect(wrapText('see repeaters.gap.offset now', 8, stringWidth)).toEqual([
    'see',
    'repeaters.gap.offset',
    'now',
  ]);
  expect(wrapText('', 8, stringWidth)).toEqual([]);
});
