import { barredSegment } from '../../consequences/barred-segment.ts';
import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { localRulesOf, sourceOf } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** A coordinator knows of links and receivers that no table of the country lists; a carrier there does harm that nobody hears at the sending end. */
export const frequencyClosedLocally = rule({
  id: 'frequency/closed-locally',
  severity: 'error',
  basis: 'band plan',
  looksFor:
    'A frequency that a rules file named in the plan keeps closed, or closes to stations of that kind.',
  why: 'The group has bound itself to the rules of its coordinator by naming them, and the plan goes against them. What is protected there may be a link that is heard by nobody in the group.',
  mend: 'Choose another frequency, or ask the coordinator who keeps the rules file.',
  sources: [commonPractice],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: [us, local/our-coordinator.yaml]  # this file keeps 146.400-146.440 closed
  coordinator: ada
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.430, width: 25 } # finding`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: [us, local/our-coordinator.yaml]  # this file keeps 146.400-146.440 closed
  coordinator: ada
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      const { answer, at, part, frequencyHz } = signal;
      const barred = part === 'output' || part === 'input' ? barredSegment(law, signal) : undefined;
      const row = barred ?? (answer.may ? undefined : answer.row);
      const local = row && localRulesOf(law, row);
      if (!row || !local) continue;
      // A packet station sends on its channel, where a closed frequency is found already.
      if (part === 'packet station' && !answer.may && answer.why === 'closed') continue;
      yield {
        at,
        message: barred
          ? `${local.name} has no repeaters at ${formatFrequency(frequencyHz)} MHz, in ${formatFrequency(barred.fromHz)}-${formatFrequency(barred.toHz)} MHz.`
          : `Closed by ${local.name}: ${answer.may ? '' : answer.text}.`,
        source: sourceOf(law, row),
      };
    }
  },
});
