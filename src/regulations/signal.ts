import type { Span } from './country.ts';

/** What is on the air: a carrier and how much room it takes. */
export interface Signal {
  /** The carrier; for single sideband the suppressed one, which is what the dial shows. */
  readonly frequencyHz: number;
  /** Whole hertz. */
  readonly widthHz: number;
  /** The side of the carrier the signal lies on. Absent: half on each side. */
  readonly sideband?: 'upper' | 'lower';
}

/** The room a signal takes. The whole of it must lie inside the segment (47 CFR 97.307(b), and the like elsewhere). */
export function occupiedSpan({ frequencyHz, widthHz, sideband }: Signal): Span {
  if (sideband === 'upper') return { fromHz: frequencyHz, toHz: frequencyHz + widthHz };
  if (sideband === 'lower') return { fromHz: frequencyHz - widthHz, toHz: frequencyHz };
  return { fromHz: frequencyHz - widthHz / 2, toHz: frequencyHz + widthHz / 2 };
}
