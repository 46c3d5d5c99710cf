import { commonPractice, rule } from '../rule.ts';

/** `memories: 128` names the one slot 128, where 128 slots were meant. */
export const radioMemoriesACount = rule({
  id: 'radio/memories-a-count',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A radio whose memories are given as one high number.',
  why: 'Memories are slot numbers. A single one says that the radio has just that slot, and none of the channels below it.',
  mend: 'Write the range of its slots, such as 1-128.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 128, tones: [ctcss] } # finding
channels:
  128: { name: GAP, repeater: gap }
check-ins: {}
fallbacks: {}`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, tones: [ctcss] }
channels:
  128: { name: GAP, repeater: gap }
check-ins: {}
fallbacks: {}`,
  *check({ plan }) {
    for (const { id, name, memories } of plan.radios.values()) {
      const [only, ...others] = memories;
      if (!only || others.length > 0 || only.from !== only.to || only.from < 8) continue;
      yield {
        at: ['radios', id, 'memories'],
        message: `${name} has only the slot ${only.from}; its memories may be meant to be that many.`,
        suggestion: `1-${only.from}`,
      };
    }
  },
});
