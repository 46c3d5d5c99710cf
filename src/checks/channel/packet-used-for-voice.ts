import { commonPractice, rule } from '../rule.ts';

/** Voice on a packet channel is not heard: its radios are muted and its stations talk over it. */
export const channelPacketUsedForVoice = rule({
  id: 'channel/packet-used-for-voice',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A check-in, or a rung without a mailbox, on a packet channel.',
  why: 'Radios on a packet channel are connected to modems and turned down. Nobody listens there, and packet stations send over whoever speaks.',
  mend: 'Choose a voice channel, or name the mailbox that the message is for.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet }
check-ins:
  morning: { name: Morning check-in, channel: 19, days: every day, at: "07:30", who: all, control: [ada], missed: first } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Mailbox }`,
  *check({ plan }) {
    const isPacket = (slot: number | undefined): boolean =>
      slot !== undefined && plan.channels.get(slot)?.mode === 'packet';
    for (const { id, name, channel } of plan.checkIns.values()) {
      if (isPacket(channel))
        yield {
          at: ['check-ins', id, 'channel'],
          message: `${name} is held by voice on slot ${channel}, a packet channel.`,
        };
    }
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { channel, mailbox }] of rungs.entries()) {
        if (mailbox === undefined && isPacket(channel))
          yield {
            at: ['fallbacks', id, 'rungs', index, 'channel'],
            message: `The rung calls by voice on slot ${channel}, a packet channel; it names no mailbox.`,
          };
      }
    }
  },
});
