import { brokenOffset } from '../../consequences/broken-offset.ts';
import { inputPath } from '../../consequences/planned-signals.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Where the rules pair the channels there is nothing to choose, and any other offset is on someone else's channel. */
export const offsetFixedByRule = rule({
  id: 'offset/fixed-by-rule',
  severity: 'error',
  basis: 'law',
  looksFor: 'A repeater with another offset than the one that the rules of its service fix.',
  why: 'The channels of such a service come in pairs. With another offset members transmit where no repeater of the service may listen, and where they may have no right to send.',
  mend: 'Write the offset that the rules give.',
  sources: [{ document: '47 CFR part 95', section: '95.1763' }],
  bad: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, output: 462.675, offset: -5, tone: 141.3 } # finding`,
  good: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, output: 462.675, offset: 5, tone: 141.3 }`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const { outputHz, inputHz, writtenAs } = repeater;
      const row = brokenOffset(law, repeater);
      if (!row) continue;
      const offsetHz = inputHz - outputHz;
      const [first = 0] = row.usualHz;
      yield {
        at: inputPath(repeater),
        message: `Offset is ${formatOffset(offsetHz)}; the rules fix ${formatOffset(first)} for an output of ${formatFrequency(outputHz)} MHz, so the input would be ${formatFrequency(outputHz + first)} MHz.`,
        suggestion: writtenAs === 'offset' ? formatOffset(first) : formatFrequency(outputHz + first),
        source: sourceOf(law, row),
      };
    }
  },
});
