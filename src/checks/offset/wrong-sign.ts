import { offsetQuestion } from '../../consequences/offset-question.ts';
import { inputPath } from '../../consequences/planned-signals.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** The sign changes within a band, and a radio set to the wrong one shows the right output and is never heard. */
export const offsetWrongSign = rule({
  id: 'offset/wrong-sign',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A repeater whose offset has the usual size and the other sign.',
  why: 'A radio with the sign reversed receives the repeater as before, so nothing seems wrong until somebody calls and is not heard.',
  mend: "Turn the sign round. Some repeaters do run reversed by their coordinator's leave: accept the finding with that reason.",
  sources: [{ document: 'ARRL band plan', section: 'repeater inputs and outputs by band' }],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: 0.6, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 147.240, offset: 0.6, tone: 100.0 }`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const asked = offsetQuestion(law, repeater);
      if (!asked || asked.known || !asked.knownReversed) continue;
      const { offsetHz, row } = asked;
      const { outputHz, inputHz, writtenAs } = repeater;
      const kept = bandPlanAt(law, inputHz)[0];
      const input = kept
        ? `which puts the input at ${formatFrequency(inputHz)} MHz (${kept.label})`
        : `which puts the input at ${formatFrequency(inputHz)} MHz`;
      yield {
        at: inputPath(repeater),
        message: `Offset is ${formatOffset(offsetHz)}, ${input}; the band plan gives ${formatOffset(-offsetHz)} at ${formatFrequency(outputHz)} MHz, and the input would be ${formatFrequency(outputHz - offsetHz)} MHz.`,
        suggestion: writtenAs === 'offset' ? formatOffset(-offsetHz) : formatFrequency(outputHz - offsetHz),
        source: sourceOf(law, row),
      };
    }
  },
});
