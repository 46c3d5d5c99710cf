/** The known word that an unknown one was most likely meant to be. */

/** No key of the language is longer, and the work grows with the square. */
const longest = 64;

/**
 * The candidate that differs by the fewest slips (a letter missing, added, wrong, or two changed about), or
 * undefined when even that one needs a slip in more than a third of its letters. Case, `_` and `-` do not
 * count. Of two equally near, the first.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  if (word.length > longest) return undefined;
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const slips = editDistance(folded(word), folded(candidate));
    const allowed = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    if (slips < fewest && slips <= allowed && slips < candidate.length) {
      best = candidate;
      fewest = slips;
    }
  }
  return best;
}

/** Optimal string alignment: the distance of Damerau (1964) in which no part is changed twice. */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) cost = Math.min(cost, (beforeLast[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

function folded(word: string): string {
  return word.toLowerCase().replaceAll(/[_\s]/g, '-');
}
