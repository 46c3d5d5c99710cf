import { twoSignalProducts, whereItFalls } from '../../consequences/intermodulation.ts';
import { commonPractice, rule } from '../rule.ts';

/** Products of the fifth order are weaker than those of the third, but no filter takes them out either. */
export const interferenceFifthOrder = rule({
  id: 'interference/fifth-order',
  severity: 'note',
  basis: 'practice',
  looksFor:
    'Two transmitters at one place that mix to a frequency that is listened to there in the fifth order (3A - 2B).',
  why: 'With good filters it is seldom heard. It is named so that whoever hunts for a noise on that channel knows where to look first.',
  mend: 'Listen for it while both are on the air; if it is there, ask whoever keeps the site about isolators.',
  sources: [{ document: 'Recommendation ITU-R SM.1134-1 (2007)', fromMemory: true }, commonPractice],
  bad: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W } # finding
  south: { name: South repeater, call: W4XSO, output: 146.74, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 146.79, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ consequences }) {
    for (const site of consequences.sites()) {
      // Two that mix in the third order are found there; moving one of them ends both.
      const third = new Set([...twoSignalProducts(site, 2, 1)].map(({ of }) => of.join(' ')));
      for (const product of twoSignalProducts(site, 3, 2)) {
        if (third.has(product.of.join(' '))) continue;
        yield {
          at: product.receiver.receivePath,
          message: `At ${site.name}, ${product.text} ${whereItFalls(product)}.`,
        };
      }
    }
  },
});
