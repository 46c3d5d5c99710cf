/**
 * Names that are taken for each other: on a small display by eye, over a noisy channel by ear.
 *
 * By eye: the pairs that label guides warn of, letter O and figure 0, I and L and 1, Z and 2, S and 5, B and 8
 * (Institute for Safe Medication Practices, Misidentification of alphanumeric symbols; S and 5, B and 8 from memory).
 *
 * By ear: a simple form of our own, not a standard. Consonants that differ only by the voice (P and B, T and D,
 * K and G, F and V, S and Z) and the nasals M and N count as one, because noise masks just that difference
 * (G. A. Miller and P. E. Nicely, An analysis of perceptual confusions among some English consonants, 1955;
 * from memory); doubled letters count once, a silent H is dropped, and number words count as figures.
 */

/** Equal for two names that look alike in capitals; spaces and punctuation are too small to part them. */
export function lookKey(name: string): string {
  return name
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/[OILZSB]/g, (letter) => lookOf[letter] ?? letter);
}

/** Equal for two names that sound alike over a poor channel. */
export function soundKey(name: string): string {
  return name
    .toUpperCase()
    .split(/[^\p{L}\p{N}]+/u)
    .map((word) => numberWords.get(word) ?? word)
    .join('')
    .replace(/PH/g, 'F')
    .replace(/CK|Q/g, 'K')
    .replace(/C(?=[EIY])/g, 'S')
    .replace(/(?<=[^CS])H|(?<=[A-Z])Y$/g, (letter) => (letter === 'Y' ? 'I' : ''))
    .replace(/[BDGCVZN]/g, (letter) => soundOf[letter] ?? letter)
    .replace(/([^0-9])\1+/gu, '$1');
}

/** Different names that look alike in capitals. */
export function alikeByEye(a: string, b: string): boolean {
  return a !== b && lookKey(a) !== '' && lookKey(a) === lookKey(b);
}

/** Different names that sound alike over a poor channel. */
export function alikeByEar(a: string, b: string): boolean {
  return a !== b && soundKey(a) !== '' && soundKey(a) === soundKey(b);
}

const lookOf: Readonly<Record<string, string>> = { O: '0', I: '1', L: '1', Z: '2', S: '5', B: '8' };

const soundOf: Readonly<Record<string, string>> = { B: 'P', D: 'T', G: 'K', C: 'K', V: 'F', Z: 'S', N: 'M' };

const numberWords: ReadonlyMap<string, string> = new Map(
  'ZERO=0 ONE=1 WON=1 TWO=2 TO=2 TOO=2 THREE=3 FOUR=4 FOR=4 FIVE=5 SIX=6 SEVEN=7 EIGHT=8 ATE=8 NINE=9 NINER=9 TEN=10'
    .split(' ')
    .map((pair): [string, string] => [pair.split('=')[0] ?? '', pair.split('=')[1] ?? '']),
);
