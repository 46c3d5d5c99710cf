/**
 * How far a group's own trials lie from their predictions: the shift of margin under which what was heard is
 * likeliest, and its spread.
 *
 * A trial tells a stretch of margin, not a figure: nothing heard is anything below the least that breaks the
 * squelch, readable anything above. So the fit is by maximum likelihood over stretches of a normal curve (censored
 * regression; J. Tobin, "Estimation of relationships for limited dependent variables", Econometrica 26, 1958), with
 * the model's own spread as what is expected before any trial, so that two trials do not move a group's figures
 * by twenty decibels.
 */
import type { Heard } from './heard.ts';
import { heardMarginDb } from './heard.ts';
import { modelSpreadDb } from './spread.ts';
import { normalShareBelow } from './verdict.ts';

export interface TriedPath {
  /** Predicted, in the direction that was tried or the worse of both, dB. */
  readonly marginDb: number;
  readonly heard: Heard;
}

export interface TrialFit {
  readonly trials: number;
  /** What was heard against what was predicted, dB: negative where the predictions are too good. */
  readonly meanErrorDb: number;
  /** One standard deviation of single trials about that mean, dB; the model's own where there are too few to tell. */
  readonly spreadDb: number;
  /** Whether the spread was fitted or is the model's. */
  readonly spreadFitted: boolean;
  /** What to add to predictions with this radio: the mean error drawn towards zero as far as few trials demand, dB. */
  readonly offeredDb: number;
}

/** With fewer, a spread is not to be had from stretches. */
const fewestForSpread = 8;

/** Undefined without trials. */
export function trialFit(tried: readonly TriedPath[]): TrialFit | undefined {
  if (tried.length === 0) return undefined;
  const spreads = tried.length >= fewestForSpread ? steps(3, 20, 0.5) : [modelSpreadDb];
  const shifts = spreads.flatMap((spread) =>
    steps(-40, 40, 0.25).map((mean) => ({
      mean,
      spread,
      likelihood: tried.reduce((sum, path) => sum + Math.log(chanceHeard(path, mean, spread)), 0),
    })),
  );
  const likeliest = Math.max(...shifts.map(({ likelihood }) => likelihood));
  const [best] = shifts
    .filter(({ likelihood }) => likelihood > likeliest - asWell)
    .toSorted((a, b) => Math.abs(a.mean) - Math.abs(b.mean) || b.likelihood - a.likelihood);
  const weight = ({ mean, likelihood }: { mean: number; likelihood: number }) =>
    likelihood - mean ** 2 / (2 * modelSpreadDb ** 2);
  const [offered] = shifts.toSorted((a, b) => weight(b) - weight(a));
  if (!best || !offered) return undefined;
  return {
    trials: tried.length,
    meanErrorDb: best.mean,
    spreadDb: best.spread,
    spreadFitted: spreads.length > 1,
    offeredDb: offered.mean,
  };
}

/**
 * A tenth of a unit of log-likelihood is no evidence: signals that were all readable fit any great shift a little
 * better than none, so of shifts that explain the trials about as well the smallest is taken.
 */
const asWell = 0.1;

/** Chance of hearing just that, if the true margin lies about the predicted one shifted by `mean`. Never quite zero. */
function chanceHeard({ marginDb, heard }: TriedPath, mean: number, spread: number): number {
  const { fromDb, toDb } = heardMarginDb[heard];
  const share = (limit: number) => normalShareBelow((limit - marginDb - mean) / spread);
  return Math.max(share(toDb) - share(fromDb), 1e-6);
}

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);
}
