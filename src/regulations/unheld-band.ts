import type { Span } from './country.ts';
import type { Law } from './law.ts';
import { mhz } from './mhz.ts';
import { holds, overlaps } from './span.ts';

const band = (name: string, from: string, to: string): AmateurBand => ({
  name,
  fromHz: mhz(from),
  toHz: mhz(to),
});

export interface AmateurBand extends Span {
  readonly name: string;
}

/**
 * The bands of the amateur service in all three regions of the ITU, each as wide as the widest region has it
 * (ITU Radio Regulations, Article 5, from memory); 60 m as wide as national rules have had it.
 */
const worldwide: readonly AmateurBand[] = [
  band('2200 m', '0.1357', '0.1378'),
  band('630 m', '0.472', '0.479'),
  band('160 m', '1.8', '2.0'),
  band('80 m', '3.5', '4.0'),
  band('60 m', '5.25', '5.45'),
  band('40 m', '7.0', '7.3'),
  band('30 m', '10.1', '10.15'),
  band('20 m', '14.0', '14.35'),
  band('17 m', '18.068', '18.168'),
  band('15 m', '21.0', '21.45'),
  band('12 m', '24.89', '24.99'),
  band('10 m', '28.0', '29.7'),
  band('6 m', '50', '54'),
  band('2 m', '144', '148'),
  band('70 cm', '420', '450'),
  band('23 cm', '1240', '1300'),
  band('13 cm', '2300', '2450'),
  band('9 cm', '3300', '3500'),
  band('6 cm', '5650', '5925'),
  band('3 cm', '10000', '10500'),
  band('1.2 cm', '24000', '24250'),
];

/**
 * The amateur band a frequency lies in, where these rules have the amateur service and no part of that band:
 * what the country says of it was not found, so nothing can be said against it. Undefined otherwise.
 */
export function unheldBand(law: Law, frequencyHz: number): AmateurBand | undefined {
  const own = law.country.allocations.filter(({ service }) => service === 'amateur');
  if (own.length === 0) return undefined;
  return worldwide.find((row) => holds(row, frequencyHz) && !own.some((held) => overlaps(held, row)));
}
