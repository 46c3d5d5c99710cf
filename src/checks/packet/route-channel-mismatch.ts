import { sameFrequencies } from '../../consequences/same-frequencies.ts';
import { rule } from '../rule.ts';

/** A digipeater repeats on the channel it hears, and a mailbox elsewhere never hears it. */
export const packetRouteChannelMismatch = rule({
  id: 'packet/route-channel-mismatch',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A route through a digipeater that is not on the channel of the mailbox.',
  why: 'Digipeaters send again on the frequency they receive. The message goes out, is repeated, and arrives nowhere.',
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
  routes:
    - { from: base, to: home, through: [ridge] } # finding`,
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
  *check({ plan, consequences }) {
    for (const [index, { to, through }] of plan.routes.entries()) {
      const mailbox = plan.mailboxes.get(to);
      for (const [hop, id] of through.entries()) {
        const digipeater = plan.digipeaters.get(id);
        if (!mailbox || !digipeater) continue;
        if (plan.channels.get(mailbox.channel)?.mode !== plan.channels.get(digipeater.channel)?.mode)
          continue;
        if (sameFrequencies(consequences, mailbox.channel, digipeater.channel) === false)
          yield {
            at: ['packet', 'routes', index, 'through', hop],
            message: `${digipeater.name} is on slot ${digipeater.channel} and ${mailbox.name} on slot ${mailbox.channel}; a digipeater repeats on the channel it hears.`,
          };
      }
    }
  },
});
