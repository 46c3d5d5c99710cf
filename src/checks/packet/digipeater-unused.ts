import { digipeaterPaths } from '../../consequences/digipeater-paths.ts';
import { commonPractice, rule } from '../rule.ts';

/** A digipeater in no path helps nobody. */
export const packetDigipeaterUnused = rule({
  id: 'packet/digipeater-unused',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A digipeater that no route and no rung goes through.',
  why: 'It is kept, powered and identified, and no card says how to use it.',
  mend: 'Name it in `through` of a route or a rung, or remove it.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
  20: { name: PKT 2, simplex: 145.030, width: 25, mode: packet, use: Packet }
packet:
  mailboxes:
    home: { call: KX4XAA-10, place: base, channel: 19, power: 5 W }
  digipeaters:
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W } # finding
  routes:
    - { from: base, to: home }`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
  20: { name: PKT 2, simplex: 145.030, width: 25, mode: packet, use: Packet }
packet:
  mailboxes:
    home: { call: KX4XAA-10, place: base, channel: 19, power: 5 W }
  digipeaters:
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W }
  routes:
    - { from: base, to: home, through: [ridge] }`,
  *check({ plan }) {
    const used = new Set(digipeaterPaths(plan).flatMap(({ through }) => through));
    for (const { id, name } of plan.digipeaters.values()) {
      if (!used.has(id))
        yield { at: ['packet', 'digipeaters', id], message: `No route and no rung goes through ${name}.` };
    }
  },
});
