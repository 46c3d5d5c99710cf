import { sameFrequencies } from '../../consequences/same-frequencies.ts';
import { rule } from '../rule.ts';

/** A digipeater repeats only what it hears on its own channel. */
export const ladderDigipeaterOffChannel = rule({
  id: 'ladder/digipeater-off-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A rung that goes through a digipeater on another channel.',
  why: 'The message is sent where the digipeater does not listen, and goes no further.',
  mend: 'Put both on one channel, or take another digipeater.',
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
    ridge: { call: KX4XBB-3, place: hill, channel: 20, power: 5 W }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 19, mailbox: home, through: [ridge], within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
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
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 19, mailbox: home, through: [ridge], within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan, consequences }) {
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { channel, mailbox, through }] of rungs.entries()) {
        if (channel === undefined) continue;
        // The same path written as a route is found there.
        const written = plan.routes.some(
          (route) => route.to === mailbox && route.through.join() === through.join(),
        );
        if (written) continue;
        for (const [hop, digipeaterId] of through.entries()) {
          const digipeater = plan.digipeaters.get(digipeaterId);
          // A digipeater on a voice channel is found where it is.
          const onPacket = digipeater && plan.channels.get(digipeater.channel)?.mode === 'packet';
          if (onPacket && sameFrequencies(consequences, channel, digipeater.channel) === false)
            yield {
              at: ['fallbacks', id, 'rungs', index, 'through', hop],
              message: `The rung sends on slot ${channel}; ${digipeater.name} is on slot ${digipeater.channel}.`,
            };
        }
      }
    }
  },
});
