import type { BandPlanRow, Span } from './country.ts';
import type { Law } from './law.ts';
import { byWidth, holds, overlaps } from './span.ts';

/** What the band plans keep a carrier's frequency for: narrowest row first; of two as narrow, the local one. */
export function bandPlanAt(law: Law, frequencyHz: number): readonly BandPlanRow[] {
  return rows(law)
    .filter((row) => holds(row, frequencyHz))
    .toSorted(byWidth);
}

/** What the band plans keep any part of a stretch for, in the same order. Calling frequencies and other spots count. */
export function bandPlanOverlapping(law: Law, fromHz: number, toHz: number): readonly BandPlanRow[] {
  const stretch: Span = { fromHz, toHz };
  return rows(law)
    .filter((row) => overlaps(row, stretch))
    .toSorted(byWidth);
}

function rows(law: Law): readonly BandPlanRow[] {
  return [...law.local.flatMap((rules) => rules.bandPlan), ...law.country.bandPlan];
}
