import { lacks } from '../needed-radios.ts';
import { commonPractice, rule } from '../rule.ts';

/** The slot is the same in every radio of the group; a radio with fewer memories has no place for it. */
export const radioSlotOutsideMemories = rule({
  id: 'radio/slot-outside-memories',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel that members need, in a slot that their radio does not have.',
  why: 'Everybody finds a channel by its slot. Where a radio has no such slot the channel cannot be entered, and its holder has no card for it.',
  mend: 'Move the channel to a slot that all the radios have.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: NEAR, simplex: 147.540, width: 25 }
  200: { name: SIMP, simplex: 146.550, width: 25 } # finding
fallbacks:
  first: { name: First, who: all, reach: [ada], rungs: [{ grade: primary, channel: 1 }, { grade: alternate, channel: 200 }] }`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: NEAR, simplex: 147.540, width: 25 }
  120: { name: SIMP, simplex: 146.550, width: 25 }
fallbacks:
  first: { name: First, who: all, reach: [ada], rungs: [{ grade: primary, channel: 1 }, { grade: alternate, channel: 120 }] }`,
  *check(context) {
    for (const { on, text, radioAt } of lacks(context, 'memory')) {
      yield {
        ...(radioAt ? { at: radioAt } : { at: ['channels', on.slot], points: 'key' as const }),
        message: `${text}.`,
      };
    }
  },
});
