import {
  mostTransmitters,
  threeSignalProducts,
  transmittersAt,
  twoSignalProducts,
  whereItFalls,
} from '../../consequences/intermodulation.ts';
import { commonPractice, rule } from '../rule.ts';

/** Two transmitters on one hill can make a third signal just where a repeater listens. */
export const interferenceThirdOrder = rule({
  id: 'interference/third-order',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'Transmitters at one place of which two or three mix to a frequency that is listened to there (2A - B, A + B - C).',
  why: 'When both are on the air the product opens the receiver or covers the caller, and nobody can tell where it comes from. Two repeaters a repeater offset apart, or half of it, always do this.',
  mend: 'Move one of them to another place or frequency, or ask whoever keeps the site about isolators and filters.',
  sources: [{ document: 'Recommendation ITU-R SM.1134-1 (2007)', fromMemory: true }, commonPractice],
  bad: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W } # finding
  south: { name: South repeater, call: W4XSO, output: 146.64, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
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
      const count = transmittersAt(site).length;
      if (count > mostTransmitters) {
        yield {
          at: ['places', site.place],
          message: `${site.name} has ${count} transmitters; with more than ${mostTransmitters} their products fall everywhere and are not reckoned.`,
        };
        continue;
      }
      for (const product of [...twoSignalProducts(site, 2, 1), ...threeSignalProducts(site)])
        yield {
          at: product.receiver.receivePath,
          message: `At ${site.name}, ${product.text} ${whereItFalls(product)}.`,
        };
    }
  },
});
