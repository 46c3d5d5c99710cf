import { shortfalls } from '../../consequences/shortfalls.ts';
import { someTransmitters } from '../../consequences/some-transmitters.ts';
import { commonPractice, rule } from '../rule.ts';

/** A channel on which one member alone can transmit has nobody to answer. */
export const channelKnownToOne = rule({
  id: 'channel/known-to-one',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A channel on which only one member may transmit.',
  why: 'Radios, licences or ranges of all others keep them off it, so a call on it is never answered.',
  mend: 'Give another member a radio that can use it, or leave it out.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
  dual: { name: Dual, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [dual], at: base }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  5: { name: UHF, simplex: 446.100, width: 25 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
  dual: { name: Dual, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld, dual], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [dual], at: base }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  5: { name: UHF, simplex: 446.100, width: 25 }`,
  *check(context) {
    const { plan, consequences } = context;
    if (
      [...plan.members.values()].filter(({ radios }) =>
        radios.some((radio) => consequences.slotsOf(radio).length > 0),
      ).length < 2
    )
      return;
    // Where others were to use it too, what keeps them off is found.
    const wanted = new Set(shortfalls(context).map(({ on }) => on.slot));
    const stations = new Set(
      [...plan.mailboxes.values(), ...plan.digipeaters.values()].map(({ channel }) => channel),
    );
    for (const { slot, name, transmitHz } of consequences.channels.values()) {
      if (transmitHz === undefined || stations.has(slot) || wanted.has(slot)) continue;
      const [onlyOne, another] = someTransmitters(context, slot, 2);
      if (onlyOne && !another)
        yield {
          at: ['channels', slot],
          message: `Only ${onlyOne.name} can transmit on slot ${slot}, ${name}.`,
        };
    }
  },
});
