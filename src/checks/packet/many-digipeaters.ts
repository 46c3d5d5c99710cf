import { digipeaterPaths, mostInFrame, mostUseful } from '../../consequences/digipeater-paths.ts';
import { commonPractice, rule } from '../rule.ts';

/** Each hop multiplies the time on the air and the frames that are lost. */
export const packetManyDigipeaters = rule({
  id: 'packet/many-digipeaters',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A path through more than two digipeaters.',
  why: 'Digipeaters do not acknowledge: a frame lost on any hop is sent again over all of them, and every hop fills the channel once more. The frame holds eight; beyond two, little arrives.',
  mend: 'Look for a path over two at most, from higher ground or through another digipeater.',
  sources: [
    {
      document: 'AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (2025)',
      section: '3.12.5',
    },
    commonPractice,
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
    - { from: base, to: home, through: [ridge, ridge, ridge] } # finding`,
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
      if (through.length > mostUseful && through.length <= mostInFrame)
        yield {
          at,
          message: `The path has ${through.length} digipeaters; more than ${mostUseful} seldom work.`,
        };
    }
  },
});
