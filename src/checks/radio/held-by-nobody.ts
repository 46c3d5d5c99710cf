import { commonPractice, rule } from '../rule.ts';

/** A kind of radio without a holder gets a worksheet that nobody asked for. */
export const radioHeldByNobody = rule({
  id: 'radio/held-by-nobody',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A kind of radio that no member holds.',
  why: 'It was left from an earlier revision, or missing from the radios of a member who has it.',
  mend: 'Add it to the member who holds it, or take it out.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
  spare: { name: Spare, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-88 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-450], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }`,
  *check({ plan, consequences }) {
    for (const { id, name } of plan.radios.values()) {
      if (consequences.holdersOf(id).length > 0) continue;
      yield { at: ['radios', id], points: 'key', message: `No member holds a ${name}.` };
    }
  },
});
