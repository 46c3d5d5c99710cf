/**
 * What a frequency was most likely meant to be: two digits exchanged, the decimal point moved by one place or
 * left out, a megahertz too many or too few. Only what the caller finds usable is offered.
 */
import { formatFrequency } from './format-quantity.ts';

export interface LikelyFrequency {
  readonly frequencyHz: number;
  readonly slip: 'digits exchanged' | 'decimal point' | 'written in kHz' | 'one megahertz off';
}

/** @param rank how well a frequency would do, 0 best; undefined for one that would not do at all */
export function likelyFrequency(
  frequencyHz: number,
  rank: (candidateHz: number) => number | undefined,
): LikelyFrequency | undefined {
  return [...slips(frequencyHz)]
    .flatMap((likely) => {
      const place = rank(likely.frequencyHz);
      return place === undefined ? [] : [{ likely, place }];
    })
    .toSorted((a, b) => a.place - b.place)[0]?.likely;
}

function* slips(frequencyHz: number): Generator<LikelyFrequency> {
  const text = formatFrequency(frequencyHz);
  const positions = [...text].flatMap((letter, index) => (letter === '.' ? [] : [index]));
  for (const [k, from] of positions.entries()) {
    const to = positions[k + 1];
    if (to === undefined || text[from] === text[to]) continue;
    const letters = [...text];
    letters[from] = text[to] ?? '';
    letters[to] = text[from] ?? '';
    yield { frequencyHz: hertz(letters.join('')), slip: 'digits exchanged' };
  }
  yield { frequencyHz: frequencyHz * 10, slip: 'decimal point' };
  if (frequencyHz % 10 === 0) yield { frequencyHz: frequencyHz / 10, slip: 'decimal point' };
  // 146940, as some menus show it: kilohertz where megahertz are read.
  if (frequencyHz % 1000 === 0) yield { frequencyHz: frequencyHz / 1000, slip: 'written in kHz' };
  yield { frequencyHz: frequencyHz - 1_000_000, slip: 'one megahertz off' };
  yield { frequencyHz: frequencyHz + 1_000_000, slip: 'one megahertz off' };
}

function hertz(megahertz: string): number {
  const [whole = '', fraction = ''] = megahertz.split('.');
  return Number(whole) * 1_000_000 + Number(fraction.padEnd(6, '0'));
}
