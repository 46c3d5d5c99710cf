import { packetStations } from '../../consequences/packet-stations.ts';
import { parsePacketAddress } from '../../radio/packet-address.ts';
import { rule } from '../rule.ts';

/** A frame has room for six characters and a number from 0 to 15, and a station that is misspelt is never found. */
export const packetCallMalformed = rule({
  id: 'packet/call-malformed',
  severity: 'error',
  basis: 'consistency',
  looksFor:
    'A packet station whose address is not one: a call sign and a number from 0 to 15 after a hyphen.',
  why: 'The address is put into every frame bit by bit. One that does not fit cannot be sent at all.',
  mend: 'Write the call sign under which the station works, and the number it was given, such as KX4XWE-10.',
  sources: [
    {
      document: 'AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (2025)',
      section: '3.12',
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
    home: { call: KX4XAA-16, place: base, channel: 19, power: 5 W } # finding
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
      const reading = parsePacketAddress(station.call);
      if (reading.ok) continue;
      const { message, suggestion } = reading;
      yield { at: [...path, 'call'], message, ...(suggestion !== undefined && { suggestion }) };
    }
  },
});
