import { workedThrough } from '../../consequences/worked-through.ts';
import { commonPractice, rule } from '../rule.ts';

/** A repeater on no channel is on no card; someone thinks that it is part of the plan. */
export const repeaterUnused = rule({
  id: 'repeater/unused',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A repeater that no channel uses.',
  why: 'Members reach a repeater by a channel in their radio. Without one it is in the plan and on no card, often because its channel was lost in an edit.',
  mend: 'Give it a slot among the channels, or take it out.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: SIMP, simplex: 146.550, width: 25 }
  3: { name: SIMP 2, simplex: 147.540, width: 25 }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check({ plan }) {
    const used = new Set(
      [...plan.channels.values()].flatMap((channel) => workedThrough(plan, channel).map(({ id }) => id)),
    );
    for (const { id, name } of plan.repeaters.values()) {
      if (used.has(id)) continue;
      yield { at: ['repeaters', id], points: 'key', message: `No channel uses ${name}.` };
    }
  },
});
