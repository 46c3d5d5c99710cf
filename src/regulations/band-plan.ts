import type { BandPlanRow, Span } from './country.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { byWidth, holds, overlaps } from './span.ts';

/** What the band plans keep a carrier's frequency for: narrowest row first; of two as narrow, the local one. */
export function bandPlanAt(law: Law, frequencyHz: number): readonly BandPlanRow[] {
  return nearby(rows(law), frequencyHz)
    .filter((row) => holds(row, frequencyHz))
    .toSorted(byWidth);
}

/** What the band plans keep any part of a stretch for, in the same order. Calling frequencies and other spots count. */
export function bandPlanOverlapping(law: Law, fromHz: number, toHz: number): readonly BandPlanRow[] {
  const stretch: Span = { fromHz, toHz };
  return nearby(rows(law), fromHz, toHz)
    .filter((row) => overlaps(row, stretch))
    .toSorted(byWidth);
}

const tables = new WeakMap<Law, readonly BandPlanRow[]>();

/** Local rows before the country's. */
function rows(law: Law): readonly BandPlanRow[] {
  const known = tables.get(law);
  if (known) return known;
  const all = [...law.local.flatMap((rules) => rules.bandPlan), ...law.country.bandPlan];
  tables.set(law, all);
  return all;
}
