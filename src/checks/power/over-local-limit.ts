import { refusedSlots } from '../../consequences/planned-signals.ts';
import type { PowerRow } from '../../regulations/country.ts';
import { localRulesOf } from '../../regulations/law.ts';
import { overLimit } from '../over-limit.ts';
import { commonPractice, rule } from '../rule.ts';
import { stationsOverLimit } from '../stations-over-limit.ts';

/** A coordinator keeps the power low where stations of several groups share a frequency; one that is louder takes it from the rest. */
export const powerOverLocalLimit = rule({
  id: 'power/over-local-limit',
  severity: 'error',
  basis: 'band plan',
  looksFor: 'More power than a rules file named in the plan allows.',
  why: 'The group has bound itself to the rules of its coordinator by naming them, and the plan goes against them, though the law of the country may allow more.',
  mend: 'Lower the power, or ask the coordinator who keeps the rules file.',
  sources: [commonPractice],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: [us, local/our-coordinator.yaml]  # this file allows 2 W on 70 cm
  coordinator: ada
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 446.500, width: 25, power: 5 W } # finding`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: [us, local/our-coordinator.yaml]  # this file allows 2 W on 70 cm
  coordinator: ada
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 446.500, width: 25, power: 1 W }`,
  *check(context) {
    if (context.law.local.every(({ powers }) => powers.length === 0)) return;
    const isLocal = (limit: PowerRow) => localRulesOf(context.law, limit) !== undefined;
    const refused = refusedSlots(context);
    for (const { slot, power } of context.plan.channels.values()) {
      const found = refused.has(slot) ? undefined : overLimit(context, slot, power, isLocal);
      if (found) yield { at: ['channels', slot, ...(power === undefined ? [] : ['power'])], ...found };
    }
    yield* stationsOverLimit(context, isLocal);
  },
});
