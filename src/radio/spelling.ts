/**
 * Words for spelling letters and figures by voice.
 *
 * ITU Radio Regulations, Appendix 14, edition of 2008. Within one country another table approved by the
 * administration may be used, and most groups say figures as plain words, so both are here.
 */
export const letterWords: readonly string[] =
  'Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu'.split(
    ' ',
  );

const figureWords =
  'Nadazero Unaone Bissotwo Terrathree Kartefour Pantafive Soxisix Setteseven Oktoeight Novenine'.split(' ');

export const plainFigures: readonly string[] = 'Zero One Two Three Four Five Six Seven Eight Nine'.split(' ');

/** The word of Appendix 14 for a letter, a figure, a point (`Decimal`); undefined for any other character. */
export function spellingWord(character: string): string | undefined {
  return wordFrom(figureWords, character);
}

/** The words of Appendix 14 for a text, one a character; spaces are left out and other characters stand for themselves. */
export function spellingWords(text: string): readonly string[] {
  return spelled(figureWords, text);
}

/** The same with figures as plain English words, as groups within one country say them: `K7` is Kilo, Seven. */
export function plainSpellingWords(text: string): readonly string[] {
  return spelled(plainFigures, text);
}

function spelled(figures: readonly string[], text: string): readonly string[] {
  return [...text]
    .filter((character) => character.trim() !== '')
    .map((character) => wordFrom(figures, character) ?? character);
}

function wordFrom(figures: readonly string[], character: string): string | undefined {
  if (/^[0-9]$/.test(character)) return figures[Number(character)];
  if (/^[A-Za-z]$/.test(character)) return letterWords[character.toUpperCase().charCodeAt(0) - 65];
  return character === '.' ? 'Decimal' : undefined;
}
