import { beforeAll, expect, it } from 'vitest';
import { openFonts } from '../../../src/documents/print/fonts.ts';
import { type Measure, measureWith } from '../../../src/documents/print/measure.ts';
import { fontBytes } from './real-fonts.ts';

let measure: Measure;
beforeAll(async () => {
  measure = measureWith(await openFonts(fontBytes));
});

it('a character the text face lacks is taken from the next that has it, and only that one', () => {
  expect(measure.pieces('Łódź → 3', false, false).pieces).toEqual([
    { text: 'Ł', font: 'fallback' },
    { text: 'ód', font: 'regular' },
    { text: 'ź', font: 'fallback' },
    { text: ' ', font: 'regular' },
    { text: '→', font: 'fallback' },
    { text: ' 3', font: 'regular' },
  ]);
  expect(measure.pieces('≥', true, true).pieces).toEqual([{ text: '≥', font: 'fallback-bold' }]);
});

it('a letter with a loose accent is set as the one letter it makes', () => {
  expect(measure.pieces('cafe\u0301', false, false).pieces).toEqual([{ text: 'café', font: 'regular' }]);
});

it('a character no font has is named once and shown as a question in a diamond', () => {
  expect(measure.pieces('a\u{1f984}b\u{1f984}', false, false)).toEqual({
    pieces: [
      { text: 'a', font: 'regular' },
      { text: '\ufffd', font: 'fallback' },
      { text: 'b', font: 'regular' },
      { text: '\ufffd', font: 'fallback' },
    ],
    missing: ['\u{1f984}'],
  });
});

it('pairs that are set closer count as they are set, and figures are never set closer', () => {
  const apart = measure.widthEm('A', 'fallback') + measure.widthEm('V', 'fallback');
  expect(measure.widthEm('AV', 'fallback')).toBeLessThan(apart);
  for (const font of ['regular', 'bold', 'mono', 'mono-bold'] as const)
    for (const pair of ['11', '10', '74', '47', '00', '99'])
      expect(measure.widthEm(pair, font)).toBeCloseTo(2 * measure.widthEm('0', font), 9);
});

it('the middles of zeros are found behind what stands before them', () => {
  const [first = 0, second = 0] = measure.zeros('10.0', 'regular');
  const digit = measure.widthEm('0', 'regular');
  expect(first).toBeCloseTo(1.5 * digit, 6);
  expect(second).toBeCloseTo(measure.widthEm('10.', 'regular') + digit / 2, 1);
});
