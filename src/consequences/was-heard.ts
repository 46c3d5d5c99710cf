import type { Trial } from '../plan/model.ts';

/** Whether somebody was heard at the last trial, which is worth more than any prediction. */
export function wasHeard(trials: readonly Trial[]): boolean {
  const last = trials.toSorted((a, b) => (a.date < b.date ? -1 : 1)).at(-1);
  return last !== undefined && last.heard !== 'nothing';
}
