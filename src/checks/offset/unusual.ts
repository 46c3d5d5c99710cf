import { offsetQuestion } from '../../consequences/offset-question.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { bandPlanAt } from '../../regulations/band-plan.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** A digit slipped in an offset leaves members calling where no repeater listens, and nothing on the radio shows it. */
export const offsetUnusual = rule({
  id: 'offset/unusual',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A repeater whose offset has a size that is not usual at its output.',
  why: 'Nearly every repeater of a band has the same offset, and radios are made to expect it. Another one is either coordinated as an exception or a slip of the pen that leaves every call unanswered.',
  mend: "Ask the repeater's keeper. If the odd offset is right, accept the finding with that reason.",
  sources: [{ document: 'ARRL band plan', section: 'repeater inputs and outputs by band' }],
  bad: `
repeaters:
  gap:
    name: Gap repeater
    output: 146.940
    offset: -0.5 # finding
    tone: 100.0`,
  good: `
repeaters:
  gap:
    name: Gap repeater
    output: 146.940
    offset: -0.6
    tone: 100.0`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const asked = offsetQuestion(law, repeater);
      // With the other sign it would be usual: then the sign is what is wrong.
      if (!asked || asked.known || asked.knownReversed) continue;
      // An output where the plan has simplex is wrong before its offset is.
      if (bandPlanAt(law, repeater.outputHz)[0]?.use === 'simplex') continue;
      const { offsetHz, row } = asked;
      const usual = row.usualHz.map(formatOffset).join(' or ');
      const likely =
        row.usualHz.length === 1
          ? row.usualHz[0]
          : row.usualHz.find((hz) => Math.sign(hz) === Math.sign(offsetHz));
      yield {
        at: ['repeaters', repeater.id, repeater.writtenAs],
        message: `Offset is ${formatOffset(offsetHz)}; the band plan gives ${usual} at ${formatFrequency(repeater.outputHz)} MHz.`,
        ...(likely !== undefined && repeater.writtenAs === 'offset' && { suggestion: formatOffset(likely) }),
        source: sourceOf(law, row),
      };
    }
  },
});
