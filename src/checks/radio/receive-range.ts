import { lacks } from '../needed-radios.ts';
import { commonPractice, rule } from '../rule.ts';

/** What a radio cannot receive it cannot hold, and its holder is missing from a net that counts on them. */
export const radioReceiveRange = rule({
  id: 'radio/receive-range',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A channel that members need and that none of their radios can receive.',
  why: 'These members cannot hear the call that the plan sends to them.',
  mend: 'Call them on a channel in the range of their radios, or correct the range.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 223.500, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 446.000, width: 25 }`,
  *check(context) {
    for (const { on, text, radioAt } of lacks(context, 'receive-range')) {
      yield {
        at: radioAt ?? ['channels', on.slot, on.channel.kind === 'split' ? 'receive' : on.channel.kind],
        message: `${text}.`,
      };
    }
  },
});
