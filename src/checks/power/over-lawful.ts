import { refusedSlots } from '../../consequences/planned-signals.ts';
import { localRulesOf } from '../../regulations/law.ts';
import { overLimit } from '../over-limit.ts';
import { rule } from '../rule.ts';

/** A power written for a channel is what its users set, whatever the rules say. */
export const powerOverLawful = rule({
  id: 'power/over-lawful',
  severity: 'error',
  basis: 'law',
  looksFor: 'A channel whose power, with the antenna of a radio that uses it, is more than the rules allow.',
  why: 'Limits differ by channel and by class, and some count what the antenna radiates. What the plan asks for is printed on every worksheet.',
  mend: 'Lower the power of the channel, or leave it out: then each radio takes its highest lawful setting.',
  sources: [{ document: '47 CFR', section: '95.567, 95.1767, 95.2767 and 97.313' }],
  bad: `
radios:
  handheld: { name: MURS set, transmits: [151-155], receives: [136-174], certified: [murs], memories: 1-16, widths: [12.5, 25], tones: [ctcss], powers: { high: 5 W, low: 1 W } }
channels:
  1: { name: GAP, standard: MURS 2 }
  3: { name: YARD, standard: MURS 3, power: 5 W } # finding`,
  good: `
radios:
  handheld: { name: MURS set, transmits: [151-155], receives: [136-174], certified: [murs], memories: 1-16, widths: [12.5, 25], tones: [ctcss], powers: { high: 5 W, low: 1 W } }
channels:
  1: { name: GAP, standard: MURS 2 }
  3: { name: YARD, standard: MURS 3, power: 1 W }`,
  *check(context) {
    const refused = refusedSlots(context);
    for (const { slot, power } of context.plan.channels.values()) {
      if (power === undefined || refused.has(slot)) continue;
      const found = overLimit(context, slot, power, (limit) => !localRulesOf(context.law, limit));
      if (found) yield { at: ['channels', slot, 'power'], ...found };
    }
  },
});
