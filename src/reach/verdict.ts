/**
 * The word for how sure a path is. A prediction is a median with a spread; the chance that the path closes is the share of the normal
 * curve above the margin, and the word says what to do with it.
 *
 * `solid` (19 in 20 and better): may carry a check-in. `likely` (3 in 4): try it once before relying on it. `doubtful`: may work from a better
 * spot. `no` (3 in 4 fail): move, or use another way. The bounds of `likely` and `no` mirror each other: a wasted walk and a missed
 * call weigh alike. These bounds are this program's own choice.
 */
export type Verdict = 'solid' | 'likely' | 'doubtful' | 'no';

const verdictBounds = { solid: 0.95, likely: 0.75, doubtful: 0.25 } as const;

export function verdictOf(probability: number): Verdict {
  if (probability >= verdictBounds.solid) return 'solid';
  if (probability >= verdictBounds.likely) return 'likely';
  return probability >= verdictBounds.doubtful ? 'doubtful' : 'no';
}

/** Chance that a median margin with a normal spread is above zero. */
export function chanceOf(marginDb: number, spreadDb: number): number {
  return normalShareBelow(marginDb / spreadDb);
}

/**
 * Share of the standard normal curve below z, to 2e-7: Abramowitz and Stegun, "Handbook of Mathematical Functions" (1964), 26.2.17.
 */
export function normalShareBelow(z: number): number {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(z));
  const polynomial =
    t *
    (0.319_381_53 + t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  const above = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
  return z >= 0 ? 1 - above : above;
}
