/**
 * A generator of whole numbers that gives the same run for the same seed: a linear congruential one modulo 2^32
 * with the multiplier 1664525 and the increment 1013904223 (Press et al., Numerical Recipes in C, second edition,
 * 1992, section 7.1), of which only the upper bits are used because the lower ones repeat soon.
 */
export class Seeded {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 up to, and not with, the limit. */
  below(limit: number): number {
    this.#state = (Math.imul(this.#state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor(((this.#state >>> 8) / 2 ** 24) * limit);
  }

  pick<T>(choices: readonly T[]): T | undefined {
    return choices[this.below(choices.length)];
  }
}
