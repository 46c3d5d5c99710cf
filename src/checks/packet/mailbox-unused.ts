import { commonPractice, rule } from '../rule.ts';

/** A mailbox that no card leads to holds messages nobody reads. */
export const packetMailboxUnused = rule({
  id: 'packet/mailbox-unused',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A mailbox that no route and no rung leads to.',
  why: 'It is kept, powered and identified, and no card says how to reach it.',
  mend: 'Name it in a route or in a rung of a ladder, or remove it.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
packet:
  mailboxes:
    home: { call: KX4XAA-10, place: base, channel: 19, power: 5 W } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  19: { name: PACKET, simplex: 145.010, width: 25, mode: packet, use: Packet }
packet:
  mailboxes:
    home: { call: KX4XAA-10, place: base, channel: 19, power: 5 W }
  routes:
    - { from: base, to: home }`,
  *check({ plan }) {
    const used = new Set<string | undefined>([
      ...plan.routes.map(({ to }) => to),
      ...[...plan.ladders.values()].flatMap(({ rungs }) => rungs.map(({ mailbox }) => mailbox)),
    ]);
    for (const { id, name } of plan.mailboxes.values()) {
      if (!used.has(id))
        yield { at: ['packet', 'mailboxes', id], message: `No route and no rung leads to ${name}.` };
    }
  },
});
