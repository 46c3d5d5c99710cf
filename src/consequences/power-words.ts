import { formatPower } from '../radio/format-quantity.ts';
import type { PowerMeasure } from '../regulations/country.ts';

/** `5 W ERP`; a power at the output stands without a word. Radiated powers are reckoned and rounded to three figures. */
export function powerWords(powerW: number, measure: PowerMeasure): string {
  if (measure === 'output') return formatPower(powerW);
  return `${formatPower(Number(powerW.toPrecision(3)))} ${measure.toUpperCase()}`;
}

/** Gains are known to a tenth of a decibel at best: a power is over a limit only by more than that. */
export function isOver(powerW: number, limitW: number): boolean {
  return powerW > limitW * 10 ** 0.01;
}
