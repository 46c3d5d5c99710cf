import { sameFrequencies } from '../../consequences/same-frequencies.ts';
import { commonPractice, rule } from '../rule.ts';

/** A message sent on another channel never arrives at the mailbox. */
export const ladderMailboxOffChannel = rule({
  id: 'ladder/mailbox-off-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A rung whose channel is not the channel of its mailbox.',
  why: 'The modem calls where the mailbox does not listen.',
  mend: 'Write the slot of the channel on which the mailbox is.',
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
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 20, mailbox: home, within: 10 min } # finding
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
      - { grade: alternate, channel: 19, mailbox: home, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan, consequences }) {
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, rung] of rungs.entries()) {
        const mailbox = rung.mailbox === undefined ? undefined : plan.mailboxes.get(rung.mailbox);
        if (!mailbox || rung.channel === undefined) continue;
        // A mailbox on a voice channel is found where it is.
        if (plan.channels.get(mailbox.channel)?.mode !== 'packet') continue;
        if (sameFrequencies(consequences, rung.channel, mailbox.channel) === false)
          yield {
            at: ['fallbacks', id, 'rungs', index, 'channel'],
            message: `The rung sends on slot ${rung.channel}; ${mailbox.name} is on slot ${mailbox.channel}.`,
            suggestion: String(mailbox.channel),
          };
      }
    }
  },
});
