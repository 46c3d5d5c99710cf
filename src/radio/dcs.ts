/**
 * Digital-coded squelch: the 23-bit word a code stands for, and which codes are one signal under two names.
 *
 * The word repeats without gap or marker, so a receiver cannot tell where it begins: every rotation of it
 * that has the fixed bits in the right place is another name of the same signal. Turning the signal upside
 * down (normal to inverted) complements the word, which in the Golay code is again a word.
 *
 * Word: nine code bits, three fixed bits, eleven check bits of the cyclic (23,12) Golay code with
 * g(x) = x¹¹ + x¹⁰ + x⁶ + x⁵ + x⁴ + x² + 1 (F. J. MacWilliams and N. J. A. Sloane, The Theory of
 * Error-Correcting Codes, 1977, chapter 16; chapter from memory). Sent lowest bit first at 134.4 bit/s (TIA-603-D,
 * 2009, clause 1.3.5.5).
 */

/** The list usually called standard: 83 codes. */
export const dcsCodes83: readonly string[] = codes(`
  023 025 026 031 032 043 047 051 054 065 071 072 073 074 114 115 116 125 131 132 134 143 152 155
  156 162 165 172 174 205 223 226 243 244 245 251 261 263 265 271 306 311 315 331 343 346 351 364
  365 371 411 412 413 423 431 432 445 464 465 466 503 506 516 532 546 565 606 612 624 627 631 632
  654 662 664 703 712 723 731 732 734 743 754
`);

/** The 83 and 21 more; closed under inversion, which the 83 are not (172 inverted reads 036). */
export const dcsCodes104: readonly string[] = [
  ...dcsCodes83,
  ...codes(`
    036 053 122 145 212 225 246 252 255 266 274 325 332 356 446 452 454 455 462 523 526
`),
].sort();

/** The 104 and eight more, met in a few radios. */
export const dcsCodes112: readonly string[] = [
  ...dcsCodes104,
  ...codes('006 007 015 017 021 050 141 214'),
].sort();

const wordBits = 23;
const allOnes = 2 ** wordBits - 1;
const generator = 0b1100_0111_0101;
/** The bits 1 0 0 above the nine code bits. */
const fixedBits = 0b100 << 9;

/** Three octal digits, as a code is written. */
export function isDcsCode(text: string): boolean {
  return /^[0-7]{3}$/.test(text);
}

/**
 * The 23-bit word of a code: check bits above, fixed bits, code bits below; bit 0 is sent first.
 * @throws {RangeError} for anything but three octal digits.
 */
export function dcsWord(code: string): number {
  if (!isDcsCode(code)) throw new RangeError(`${code} is not three octal digits.`);
  const information = fixedBits | Number.parseInt(code, 8);
  return (remainder(information << 11) << 12) | information;
}

/** The word as it goes out: complemented when sent inverted. */
export function dcsSignal(code: string, inverted: boolean): number {
  return inverted ? dcsWord(code) ^ allOnes : dcsWord(code);
}

/** The same signal whatever it is called: the smallest of its word's rotations. Two codes clash when these are equal. */
export function canonicalSignal(code: string, inverted: boolean): number {
  return Math.min(...rotations(dcsSignal(code, inverted)));
}

/** Other codes that are the very same signal, in order: 340 and 766 for 023. */
export function dcsAliases(code: string): readonly string[] {
  return namesOf(dcsWord(code)).filter((name) => name !== code);
}

/** All codes that read a code's inverted signal as their own, in order; a few codes (112, 250, 505, 512) have none. */
export function dcsInverses(code: string): readonly string[] {
  return namesOf(dcsSignal(code, true));
}

/** The usual name of a code's inverse: the one in the list of 104, then of 112, then the lowest; none where there is none. */
export function dcsInverse(code: string): string | undefined {
  return usualName(dcsInverses(code));
}

/** The name under which a signal is usually listed: 023 for 340. */
export function usualDcsName(code: string): string {
  return usualName([code, ...dcsAliases(code)]) ?? code;
}

function usualName(names: readonly string[]): string | undefined {
  return (
    names.find((name) => dcsCodes104.includes(name)) ??
    names.find((name) => dcsCodes112.includes(name)) ??
    names[0]
  );
}

function namesOf(word: number): readonly string[] {
  const names = rotations(word)
    .filter((rotation) => (rotation & 0b1110_0000_0000) === fixedBits)
    .map((rotation) => (rotation & 0o777).toString(8).padStart(3, '0'));
  return [...new Set(names)].sort();
}

function rotations(word: number): readonly number[] {
  return Array.from({ length: wordBits }, (_, by) => ((word << by) | (word >>> (wordBits - by))) & allOnes);
}

/** Division over GF(2); what is left has eleven bits. */
function remainder(dividend: number): number {
  let rest = dividend;
  for (let bit = 22; bit >= 11; bit -= 1) {
    if (rest & (1 << bit)) rest ^= generator << (bit - 11);
  }
  return rest;
}

function codes(text: string): readonly string[] {
  return text.trim().split(/\s+/);
}
