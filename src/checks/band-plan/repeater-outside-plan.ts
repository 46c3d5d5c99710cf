import { reachesBarred } from '../../consequences/barred-segment.ts';
import { offsetQuestion } from '../../consequences/offset-question.ts';
import { plannedSignals } from '../../consequences/planned-signals.ts';
import { reversedPair } from '../../consequences/reversed-pair.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const kept = {
  output: [
    'simplex',
    'calling',
    'weak-signal',
    'cw',
    'satellite',
    'beacon',
    'packet',
    'positions',
    'model-control',
    'image',
    'guard',
    'repeater-input',
  ],
  input: [
    'simplex',
    'calling',
    'weak-signal',
    'cw',
    'satellite',
    'beacon',
    'packet',
    'positions',
    'model-control',
    'image',
    'guard',
    'repeater-output',
  ],
} as const satisfies Record<string, readonly BandPlanUse[]>;

/** A repeater where the plan has simplex or inputs is either a regional exception or a mistyped digit. */
export const bandPlanRepeaterOutsidePlan = rule({
  id: 'band-plan/repeater-outside-plan',
  severity: 'warning',
  basis: 'band plan',
  looksFor:
    'A repeater whose output or input lies where the band plan keeps the frequency for something else.',
  why: 'Coordinators place repeaters in the segments that the plan has for them. One elsewhere is rare, and a wrong digit is not.',
  mend: "Compare the figures with the coordinator's list. If they are right, accept the finding with that reason.",
  sources: [{ document: 'ARRL band plan', section: 'repeater inputs and outputs by band' }],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 147.540, offset: -0.6, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check(context) {
    const { law } = context;
    const told = new Set<string>();
    for (const signal of plannedSignals(context)) {
      if (signal.part !== 'output' && signal.part !== 'input') continue;
      const { part, repeater, answer, frequencyHz, at, services } = signal;
      if (!answer.may || !services.includes('amateur') || told.has(repeater.id)) continue;
      if (repeater.inputHz === repeater.outputHz || reversedPair(law, repeater)) continue;
      if (reachesBarred(law, repeater)) continue;
      // An input that a wrong or unusual offset put there is found as that offset; a known one is right there.
      if (part === 'input' && offsetQuestion(law, repeater)) continue;
      const [row] = bandPlanAt(law, frequencyHz);
      if (!row || !kept[part].some((use) => use === row.use)) continue;
      if (part === 'output' && offsetQuestion(law, repeater)?.known) continue;
      told.add(repeater.id);
      yield {
        at,
        message: `${part === 'output' ? 'Output' : 'Input'} is ${formatFrequency(frequencyHz)} MHz, where the band plan has ${row.label}.`,
        source: sourceOf(law, row),
      };
    }
  },
});
