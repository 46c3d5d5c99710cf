import { expect, test } from 'vitest';
import { plainSpellingWords, spellingWord, spellingWords } from '../../src/radio/spelling.ts';

// ITU Radio Regulations, Appendix 14 (2008).
const appendix14 =
  'A Alfa B Bravo C Charlie D Delta E Echo F Foxtrot G Golf H Hotel I India J Juliett K Kilo L Lima M Mike N November O Oscar P Papa Q Quebec R Romeo S Sierra T Tango U Uniform V Victor W Whiskey X X-ray Y Yankee Z Zulu 0 Nadazero 1 Unaone 2 Bissotwo 3 Terrathree 4 Kartefour 5 Pantafive 6 Soxisix 7 Setteseven 8 Oktoeight 9 Novenine . Decimal'.split(
    ' ',
  );

test('every letter and figure has its word of Appendix 14', () => {
  for (let index = 0; index < appendix14.length; index += 2) {
    expect(spellingWord(appendix14[index] ?? '')).toBe(appendix14[index + 1]);
  }
  expect(appendix14).toHaveLength(74);
});

test('a code is spelled letter by letter, with plain figures within one country', () => {
  expect(spellingWords('k7 m2')).toEqual(['Kilo', 'Setteseven', 'Mike', 'Bissotwo']);
  expect(plainSpellingWords('K7M2')).toEqual(['Kilo', 'Seven', 'Mike', 'Two']);
});

test('a character without a word stands for itself', () => {
  expect(spellingWords('É-1')).toEqual(['É', '-', 'Unaone']);
  expect(spellingWord('AB')).toBeUndefined();
  expect(spellingWord('')).toBeUndefined();
});
