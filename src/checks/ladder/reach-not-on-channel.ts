import { shortfalls } from '../../consequences/shortfalls.ts';
import { someTransmitters } from '../../consequences/some-transmitters.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** A call is answered only by somebody who has the channel. */
export const ladderReachNotOnChannel = rule({
  id: 'ladder/reach-not-on-channel',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A rung on a channel on which none of those to be reached can answer.',
  why: 'Members call where nobody whom they want to reach can transmit. The rung costs its time and never works.',
  mend: 'Choose a channel that one of them holds, or name others in `reach`.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
  dual: { name: Dual, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [dual], at: base }
  cat: { name: Cat Example, licences: { amateur: { class: technician, call: KX4XCC, expires: 2033-02-01 } }, radios: [dual], at: base }
channels:
  1: { name: GAP, repeater: gap }
  5: { name: UHF, simplex: 446.100, width: 25 }
fallbacks:
  first:
    name: First
    who: [ben, cat]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 5, calls: 3, within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
  dual: { name: Dual, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld, dual], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [dual], at: base }
  cat: { name: Cat Example, licences: { amateur: { class: technician, call: KX4XCC, expires: 2033-02-01 } }, radios: [dual], at: base }
channels:
  1: { name: GAP, repeater: gap }
  5: { name: UHF, simplex: 446.100, width: 25 }
fallbacks:
  first:
    name: First
    who: [ben, cat]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 5, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check(context) {
    const { plan, consequences } = context;
    const short = new Set(shortfalls(context).map(({ member, on }) => `${member.id} ${on.slot}`));
    for (const { id, reach, rungs } of plan.ladders.values()) {
      const equipped = reach
        .flatMap((member) => plan.members.get(member) ?? [])
        .filter(({ radios }) => radios.length > 0);
      if (equipped.length === 0) continue;
      for (const [index, { channel: slot, mailbox }] of rungs.entries()) {
        const on = slot === undefined ? undefined : consequences.channels.get(slot);
        if (!on || on.transmitHz === undefined || mailbox !== undefined) continue;
        if (equipped.some((member) => consequences.best(member.id, on.slot)?.may === 'transmit')) continue;
        // What keeps each of them off may be found already.
        if (equipped.every(({ id: member }) => short.has(`${member} ${on.slot}`))) continue;
        // Where nobody at all can transmit the channel is at fault, not the ladder.
        if (someTransmitters(context, on.slot, 1).length === 0) continue;
        yield {
          at: ['fallbacks', id, 'rungs', index, 'channel'],
          message: `None of those to be reached, ${listNames(equipped.map(({ name }) => name))}, can answer on slot ${on.slot}, ${on.name}.`,
        };
      }
    }
  },
});
