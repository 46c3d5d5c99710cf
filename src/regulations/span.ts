import type { Span } from './country.ts';

/** Whether a frequency lies in a span, ends included. */
export function holds(span: Span, frequencyHz: number): boolean {
  return span.fromHz <= frequencyHz && frequencyHz <= span.toHz;
}

/**
 * Whether two spans share more than an edge. A span of no width (a carrier, a spot) counts as shared when it
 * lies on an edge too: whatever is sent there has a width.
 */
export function overlaps(a: Span, b: Span): boolean {
  if (a.fromHz === a.toHz || b.fromHz === b.toHz) return a.fromHz <= b.toHz && b.fromHz <= a.toHz;
  return a.fromHz < b.toHz && b.fromHz < a.toHz;
}

/** Whether the spans together, joined where they touch, leave no part of the wanted one uncovered. */
export function covered(wanted: Span, spans: readonly Span[]): boolean {
  let reachedHz = wanted.fromHz;
  let joined = false;
  for (const span of spans.toSorted((a, b) => a.fromHz - b.fromHz)) {
    if (span.fromHz > reachedHz) break;
    if (span.toHz < reachedHz) continue;
    reachedHz = span.toHz;
    joined = true;
    if (reachedHz >= wanted.toHz) return true;
  }
  return joined && reachedHz >= wanted.toHz;
}

/** Narrower before wider. */
export function byWidth(a: Span, b: Span): number {
  return a.toHz - a.fromHz - (b.toHz - b.fromHz);
}
