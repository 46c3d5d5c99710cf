import { describe, expect, test } from 'vitest';
import { type Heard, heardMarginDb } from '../../src/reach/heard.ts';
import { trialFit } from '../../src/reach/trial-fit.ts';

/** What would be heard at a margin. */
function heardAt(marginDb: number): Heard {
  const words: readonly Heard[] = ['readable', 'weak', 'broken', 'nothing'];
  return words.find((word) => marginDb > heardMarginDb[word].fromDb) ?? 'nothing';
}

describe('what trials say of predictions', () => {
  test('the four words cover every margin without a gap', () => {
    const bounds = (['nothing', 'broken', 'weak', 'readable'] as const).map((word) => heardMarginDb[word]);
    for (const [index, { toDb }] of bounds.entries()) {
      if (index < 3) expect(bounds[index + 1]?.fromDb).toBe(toDb);
    }
    expect(bounds[0]?.fromDb).toBe(Number.NEGATIVE_INFINITY);
    expect(bounds[3]?.toDb).toBe(Number.POSITIVE_INFINITY);
  });

  test('without trials nothing is said', () => {
    expect(trialFit([])).toBeUndefined();
  });

  // The truth is chosen here, so that the fit can be held against it: a normal spread sampled at even shares.
  test.each([-12, -6, 0, 6])('trials that are %d dB off on the whole are found to be', (shift) => {
    const z = [-1.645, -1.036, -0.674, -0.385, -0.126, 0.126, 0.385, 0.674, 1.036, 1.645];
    const tried = [-10, 0, 10, 20].flatMap((marginDb) =>
      z.map((deviation) => ({ marginDb, heard: heardAt(marginDb + shift + 6 * deviation) })),
    );
    const fit = trialFit(tried);
    expect(fit?.trials).toBe(40);
    expect(fit?.meanErrorDb).toBeGreaterThan(shift - 1.5);
    expect(fit?.meanErrorDb).toBeLessThan(shift + 1.5);
    expect(fit?.spreadFitted).toBe(true);
    expect(fit?.spreadDb).toBeGreaterThan(4);
    expect(fit?.spreadDb).toBeLessThan(8);
  });

  test('a single silence on a strong path moves the offer less than it moves the mean', () => {
    const fit = trialFit([{ marginDb: 15, heard: 'nothing' }]);
    expect(fit?.meanErrorDb).toBeLessThan(-20);
    expect(fit?.offeredDb).toBeLessThan(-5);
    expect(fit?.offeredDb).toBeGreaterThan(-20);
    expect(fit?.spreadFitted).toBe(false);
  });

  test('being heard well where that was expected moves nothing far', () => {
    const fit = trialFit([
      { marginDb: 30, heard: 'readable' },
      { marginDb: 40, heard: 'readable' },
    ]);
    expect(Math.abs(fit?.offeredDb ?? 99)).toBeLessThan(1);
  });
});
