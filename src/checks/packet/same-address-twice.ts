import { packetStations } from '../../consequences/packet-stations.ts';
import { formatPacketAddress, parsePacketAddress } from '../../radio/packet-address.ts';
import { rule } from '../rule.ts';

/** Two stations of one address answer each other's callers. */
export const packetSameAddressTwice = rule({
  id: 'packet/same-address-twice',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'Two packet stations with the same address.',
  why: 'A station is known by its call sign and number alone. Two of one address both acknowledge and both repeat, and the link between any others fails.',
  mend: 'Give one of them another number after the hyphen.',
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
    home: { call: KX4XAA-10, place: base, channel: 19, power: 5 W }
  digipeaters:
    ridge: { call: KX4XAA-10, place: hill, channel: 19, power: 5 W } # finding`,
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
    const first = new Map<string, string>();
    for (const { path, station } of packetStations(plan)) {
      const reading = parsePacketAddress(station.call);
      if (!reading.ok) continue;
      const address = formatPacketAddress(reading.value);
      const before = first.get(address);
      if (before === undefined) first.set(address, station.name);
      else
        yield {
          at: [...path, 'call'],
          message: `${station.name} has the address ${address}, and so has ${before}.`,
        };
    }
  },
});
