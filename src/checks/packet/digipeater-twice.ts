import { digipeaterPaths } from '../../consequences/digipeater-paths.ts';
import { rule } from '../rule.ts';

/** A digipeater repeats a frame once; named twice it stops the message. */
export const packetDigipeaterTwice = rule({
  id: 'packet/digipeater-twice',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A path that goes through the same digipeater twice.',
  why: 'A digipeater marks the frame as repeated and hands it to the next address. When that is its own again it must hear itself, which it cannot while it sends.',
  mend: 'Name each digipeater once, in the order in which the message passes them.',
  sources: [
    {
      document: 'AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (2025)',
      section: '3.12.5',
    },
  ],
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
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W }
  routes:
    - { from: base, to: home, through: [ridge, ridge] } # finding`,
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
    for (const { at, through } of digipeaterPaths(plan)) {
      const hop = through.findIndex((id, index) => through.indexOf(id) < index);
      const id = through[hop];
      if (id !== undefined)
        yield {
          at: [...at, hop],
          message: `The path goes through ${plan.digipeaters.get(id)?.name ?? id} twice.`,
        };
    }
  },
});
