import { plannedSignals } from '../../consequences/planned-signals.ts';
import { sourceOf } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** A coordinator knows of links and receivers that no table of the country lists; a carrier there does harm that nobody hears at the sending end. */
export const frequencyClosedLocally = rule({
  id: 'frequency/closed-locally',
  severity: 'error',
  basis: 'band plan',
  looksFor: 'A frequency that a rules file named in the plan keeps closed.',
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
    for (const { answer, at, part } of plannedSignals(context)) {
      // A packet station sends on its channel, where this is found already.
      if (part === 'packet station' || answer.may || answer.why !== 'closed') continue;
      yield {
        at,
        message: `Closed by local coordination: ${answer.text}.`,
        ...(answer.row && { source: sourceOf(law, answer.row) }),
      };
    }
  },
});
