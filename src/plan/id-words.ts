/** What an id may look like, and the words of a name from which one is made. */

export const idPattern = /^[a-z][a-z0-9-]{0,31}$/;

/** Letters that have no form without their stroke, as passports write them (ICAO Doc 9303, part 3, section 6; from memory). */
const plainLetters: Readonly<Record<string, string>> = {
  ł: 'l',
  ø: 'oe',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
};

/** The words of a name in the letters that an id may have. */
export function idWords(name: string): string[] {
  return name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[łøđðþßæœı]/g, (letter) => plainLetters[letter] ?? letter)
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '');
}

/** The id that was most likely meant by one written with capitals, spaces or other marks. */
export function likelyId(written: string): string | undefined {
  const id = idWords(written).join('-');
  return idPattern.test(id) ? id : undefined;
}
