import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** The dial shows the carrier alone; on an edge, half of the signal is on the other side of it. */
export const frequencyEdgeSpill = rule({
  id: 'frequency/edge-spill',
  severity: 'error',
  basis: 'law',
  looksFor: 'A frequency inside its segment whose signal, being as wide as it is, spills over the edge.',
  why: 'The whole signal must lie inside the band and the segment, and half of it lies on each side of what the dial shows.',
  mend: 'Move the channel away from the edge by half the width of the signal or more.',
  sources: [{ document: '47 CFR part 97', section: '97.307(b)' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EDGE, simplex: 147.995, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EDGE, simplex: 147.990, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const { answer, at, part, frequencyHz, on, overshadowed } of plannedSignals(context)) {
      if (part === 'packet station' || overshadowed || answer.may || answer.why !== 'edge') continue;
      yield {
        at,
        message: `At ${formatFrequency(frequencyHz)} MHz, ${formatSpacing(on.occupiedHz)} wide, ${answer.text}.`,
        ...(answer.row && { source: sourceOf(law, answer.row) }),
      };
    }
  },
});
