import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Some segments are open only to those who have done or are something that no plan can show. */
export const frequencyConditional = rule({
  id: 'frequency/conditional',
  severity: 'warning',
  basis: 'law',
  looksFor:
    'A channel, repeater or packet station on a frequency that the rules open on a condition beyond the licence.',
  why: 'Notice given to a society, a fixed system, a disaster under way: whether such a condition is met stands in no plan. Where it is not, whoever transmits there does so unlawfully, class and licence notwithstanding.',
  mend: 'Take another frequency. If the condition is met, accept the finding with the reason that shows it.',
  sources: [{ document: '47 CFR part 97', section: '97.303(l)' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: LINK, simplex: 219.500, mode: packet, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: LINK, simplex: 223.560, mode: packet, width: 25 }`,
  *check(context) {
    const { law } = context;
    const told = new Set<string>();
    for (const signal of plannedSignals(context)) {
      const { answer, at, frequencyHz, part } = signal;
      // A packet station sends on a channel, and is found there.
      if (part === 'packet station' || !answer.may || !('condition' in answer.row)) continue;
      const { row } = answer;
      const whose = part === 'channel' ? at.join('.') : signal.repeater.id;
      if (row.condition === undefined || told.has(whose)) continue;
      told.add(whose);
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz is open on a condition that a plan cannot show: ${row.condition}.`,
        source: sourceOf(law, row),
      };
    }
  },
});
