import { commonPractice, rule } from '../rule.ts';

/** A kind of radio that fits no channel has a figure wrong, or its worksheet is an empty page. */
export const radioHoldsNothing = rule({
  id: 'radio/holds-nothing',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A kind of radio, held by members who have another one, that can hold no channel of the plan.',
  why: 'Its ranges, modes, steps or slots fit none of the channels. Often a range was written in the wrong unit.',
  mend: 'Check the figures in the manual; take the radio out if it has no part in the plan.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
  marine: { name: Marine set, receives: [156-162], memories: 1-88 } # finding
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld, marine], at: base }`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
  scanner: { name: Scanner, receives: [118-174], memories: 1-88 }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld, scanner], at: base }`,
  *check({ plan, consequences }) {
    if (consequences.channels.size === 0) return;
    const empty = (radio: string) => consequences.slotsOf(radio).length === 0;
    for (const { id, name } of plan.radios.values()) {
      const holders = consequences.holdersOf(id);
      if (holders.length === 0 || !empty(id)) continue;
      // Someone who is left with nothing at all is found by name.
      const left = holders.some((holder) => plan.members.get(holder)?.radios.every(empty));
      if (left) continue;
      yield { at: ['radios', id], points: 'key', message: `${name} can hold none of the plan's channels.` };
    }
  },
});
