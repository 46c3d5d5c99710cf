import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { likelyFrequency } from '../../radio/likely-frequency.ts';
import { listenOnlyAt } from '../../regulations/allocations.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { unheldBand } from '../../regulations/unheld-band.ts';
import { rule } from '../rule.ts';

const forOutputs: readonly BandPlanUse[] = ['repeater-output', 'repeater', 'mixed'];

/** A wrong digit in the output moves the input with it, so the whole repeater is somewhere else. */
export const frequencyOutputOutsideBand = rule({
  id: 'frequency/output-outside-band',
  severity: 'error',
  basis: 'law',
  looksFor: 'A repeater whose output lies in no service that the country has for a group.',
  why: 'No repeater that the group may use can stand there, so members would listen to nothing, or to another service.',
  mend: "Correct the output; ask the repeater's keeper, or look in the coordinator's list.",
  sources: [{ document: '47 CFR part 97', section: '97.301' }],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 149.640 # finding
    offset: -0.6
    tone: 100.0`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    call: W4XGP
    output: 146.940
    offset: -0.6
    tone: 100.0`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      if (signal.part !== 'output') continue;
      const { answer, frequencyHz, at, repeater } = signal;
      if (answer.may || answer.why !== 'outside') continue;
      if (serviceOf(law, frequencyHz, frequencyHz).length > 0) continue;
      if (listenOnlyAt(law, frequencyHz).length > 0 || unheldBand(law, frequencyHz)) continue;
      const offsetHz = repeater.inputHz - repeater.outputHz;
      const likely = likelyFrequency(frequencyHz, (hz) => {
        if (
          serviceOf(law, hz, repeater.writtenAs === 'offset' ? hz + offsetHz : repeater.inputHz).length === 0
        )
          return undefined;
        const use = bandPlanAt(law, hz)[0]?.use;
        const rank = use === undefined ? -1 : forOutputs.indexOf(use);
        return rank < 0 ? undefined : rank;
      });
      const message = `Output is ${formatFrequency(frequencyHz)} MHz, in no service that a group may use (rules: ${law.country.name})`;
      yield {
        at,
        message: likely
          ? `${message}; ${formatFrequency(likely.frequencyHz)} MHz is (${likely.slip}?).`
          : `${message}.`,
        ...(likely && { suggestion: formatFrequency(likely.frequencyHz) }),
      };
    }
  },
});
