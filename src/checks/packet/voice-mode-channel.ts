import { packetStations } from '../../consequences/packet-stations.ts';
import { commonPractice, rule } from '../rule.ts';

/** A packet station on a channel that radios hold as voice is not worked by anybody. */
export const packetVoiceModeChannel = rule({
  id: 'packet/voice-mode-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A mailbox or digipeater on a channel whose mode is not packet.',
  why: 'Cards and worksheets then tell members to speak where a modem listens, and who may use the channel is worked out for voice.',
  mend: 'Write `mode: packet` at the channel, or the slot of the packet channel at the station.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
  20: { name: PKT 2, simplex: 145.030, width: 25, mode: packet, use: Packet }
packet:
  mailboxes:
    home: { call: KX4XAA-10, place: base, channel: 3, power: 5 W } # finding
  digipeaters:
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W }`,
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
    ridge: { call: KX4XBB-3, place: hill, channel: 19, power: 5 W }`,
  *check({ plan }) {
    for (const { path, station } of packetStations(plan)) {
      const channel = plan.channels.get(station.channel);
      if (channel && channel.mode !== 'packet')
        yield {
          at: [...path, 'channel'],
          message: `${station.name} is on slot ${channel.slot}, ${channel.name}, whose mode is ${channel.mode}; a packet station needs packet.`,
        };
    }
  },
});
