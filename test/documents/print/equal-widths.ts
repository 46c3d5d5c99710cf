import type { Measure } from '../../../src/documents/print/measure.ts';

/** Letters of half the type size each, so that widths in tests can be counted on the fingers. */
export const equalWidths: Measure = {
  pieces: (text, strong) => ({
    pieces: text === '' ? [] : [{ text, font: strong ? 'bold' : 'regular' }],
    missing: [...text].filter((character) => character === '\u{1f984}'),
  }),
  widthEm: (text) => [...text].length * 0.5,
  heights: () => ({ ascent: 0.75, descent: 0.25, capHeight: 0.7, xHeight: 0.5 }),
  zeros: () => [],
};
