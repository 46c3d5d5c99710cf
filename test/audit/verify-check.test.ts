import { describe, expect, test } from 'vitest';
import { readSpokenCheck, verifyCheck } from '../../src/audit/verify-check.ts';

const kept = [
  { file: 'r2.yaml', title: 'A', revision: 2, check: 'K7M4' },
  { file: 'r3.yaml', title: 'A', revision: 3, check: 'N5L3' },
];

describe('a plan check as it is heard', () => {
  // Spelling words: ITU Radio Regulations, Appendix 14 (2008); tree, fife and niner as figures are pronounced (common practice).
  test.each([
    'N5L3',
    'n5l3',
    'n5-l3',
    'November Five Lima Three',
    'november pantafive lima terrathree',
    'N fife L tree',
    'November, 5, Lima, 3',
  ])('%s', (text) => {
    expect(readSpokenCheck(text)).toBe('N5L3');
  });

  test.each(['', 'N5L', '5N3L', 'N5L33', 'November Five', 'NN55'])('"%s" is none', (text) => {
    expect(readSpokenCheck(text)).toBeUndefined();
  });
});

describe('which revision somebody holds', () => {
  test('the one with this very check', () => {
    expect(verifyCheck('K7M4', kept)).toMatchObject({ exact: [{ revision: 2 }], newest: [{ revision: 3 }] });
  });

  test('of two plans kept side by side, each has its own newest', () => {
    const both = [...kept, { file: 'camp.yaml', title: 'B', revision: 12, check: 'R2T8' }];
    expect(verifyCheck('N5L3', both).newest).toMatchObject([{ title: 'A', revision: 3 }]);
    expect(verifyCheck('X2X2', both).newest).toMatchObject([
      { title: 'A', revision: 3 },
      { title: 'B', revision: 12 },
    ]);
  });

  test('five misheard as nine is near, and sounds alike', () => {
    expect(verifyCheck('N9L3', kept).near).toMatchObject([
      { kept: { revision: 3 }, slip: 'Nine for Five, which sound alike' },
    ]);
  });

  test('two characters exchanged are near; two wrong ones are not', () => {
    expect(verifyCheck('L5N3', kept).near).toMatchObject([{ slip: 'November and Lima exchanged' }]);
    expect(verifyCheck('P5X3', kept).near).toEqual([]);
  });
});
