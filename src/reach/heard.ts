/**
 * What a listener says of a signal, and the margin over what they need for which they say it. The four words are
 * those of a plan's trials; the bounds are this program's judgement after the readability scale (1 unreadable to
 * 5 perfectly readable, ARRL Handbook): readable 4 and 5, weak 3, broken 2, nothing 1 or silence.
 */
export type Heard = 'readable' | 'weak' | 'broken' | 'nothing';

/** Margin over 20 dB of quieting, dB. An FM signal falls from noisy but readable to nothing within some 10 dB. */
export const heardMarginDb: Readonly<Record<Heard, { readonly fromDb: number; readonly toDb: number }>> = {
  readable: { fromDb: 3, toDb: Number.POSITIVE_INFINITY },
  weak: { fromDb: -3, toDb: 3 },
  broken: { fromDb: -8, toDb: -3 },
  nothing: { fromDb: Number.NEGATIVE_INFINITY, toDb: -8 },
};
