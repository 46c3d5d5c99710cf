import { digipeaterPaths, mostInFrame } from '../../consequences/digipeater-paths.ts';
import { rule } from '../rule.ts';

/** A frame has room for eight digipeaters and no more. */
export const packetTooManyDigipeaters = rule({
  id: 'packet/too-many-digipeaters',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A path through more than eight digipeaters.',
  why: 'The address field of a frame ends after eight. A longer path cannot be written into it.',
  mend: 'Shorten the path; more than two seldom work.',
  sources: [
    {
      document: 'AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (2025)',
      section: '3.12 and 3.12.5',
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
    - { from: base, to: home, through: [ridge, ridge, ridge, ridge, ridge, ridge, ridge, ridge, ridge] } # finding`,
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
      if (through.length > mostInFrame)
        yield {
          at,
          message: `The path has ${through.length} digipeaters; a frame holds at most ${mostInFrame}.`,
        };
    }
  },
});
