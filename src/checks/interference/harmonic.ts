import { harmonics, whereItFalls } from '../../consequences/intermodulation.ts';
import { commonPractice, rule } from '../rule.ts';

/** A transmitter is heard at twice and three times its frequency by a receiver next to it. */
export const interferenceHarmonic = rule({
  id: 'interference/harmonic',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'A transmitter of which a harmonic, the second to the fifth, falls on what is listened to at the same place.',
  why: 'Even a good transmitter leaves a thousandth of a thousandth of its power there, which is still far more than a receiver beside it needs.',
  mend: 'Choose another frequency for one of them, or put a filter behind the transmitter.',
  sources: [commonPractice],
  bad: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 147.24, offset: 0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 446.72, offset: -5, tone: 100.0, width: 25, place: hill, power: 25 W } # finding
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 147.24, offset: 0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 446.825, offset: -5, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ consequences }) {
    for (const site of consequences.sites()) {
      for (const product of harmonics(site, [2, 3, 4, 5]))
        yield {
          at: product.receiver.receivePath,
          message: `At ${site.name}, ${product.text} ${whereItFalls(product)}.`,
        };
    }
  },
});
