import { brokenOffset } from '../../consequences/broken-offset.ts';
import { plannedSignals } from '../../consequences/planned-signals.ts';
import { widestSpacingHz } from '../../radio/emission.ts';
import { formatFrequency, formatSpacing } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { widthLimit } from '../../regulations/width-limit.ts';
import { rule } from '../rule.ts';
import { writtenWidthPath } from '../written-width.ts';

/** A channel of a narrow service set to wide spills into both neighbours. */
export const widthOverLawful = rule({
  id: 'width/over-lawful',
  severity: 'error',
  basis: 'law',
  looksFor: 'A channel or repeater whose signal is wider than the rules allow at its frequency.',
  why: 'The rules hold each segment or channel to a width. A radio set wider is unlawful there, and heard in the channels beside it.',
  mend: 'Set the narrower width.',
  sources: [{ document: '47 CFR', section: '95.573, 95.2773, 95.973 and 97.307' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: YARD, standard: MURS 3, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: YARD, standard: MURS 3, width: 12.5 }`,
  *check(context) {
    const { law } = context;
    const told = new Set<string>();
    for (const signal of plannedSignals(context)) {
      const { answer, on, services, frequencyHz, part, overshadowed } = signal;
      if (part === 'packet station' || overshadowed || answer.may || answer.why !== 'width') continue;
      // Of a pair that is none: what is wrong is the offset, and no width was meant for where it leads.
      if (signal.part === 'input' && brokenOffset(law, signal.repeater)) continue;
      if (signal.part === 'output' && !on.spacingWritten && brokenOffset(law, signal.repeater)) continue;
      const at = writtenWidthPath(signal);
      // A repeater's width is written once for both of its ends.
      if (told.has(at.join('.'))) continue;
      told.add(at.join('.'));
      const { kind, modulation, mode } = on;
      const limit = services
        .map((service) => widthLimit(law, { service, frequencyHz, kind, ...(modulation && { modulation }) }))
        .find((row) => row !== undefined);
      if (!limit) continue;
      const narrowHz =
        mode === 'fm' || mode === 'packet' ? widestSpacingHz(mode, limit.maxWidthHz) : undefined;
      if (mode === 'packet' && narrowHz === undefined) {
        yield {
          at,
          message: `Packet of 1200 bit/s (${on.emission}) is ${formatSpacing(on.occupiedHz)} wide at any spacing; at ${formatFrequency(frequencyHz)} MHz the rules allow ${formatSpacing(limit.maxWidthHz)}.`,
          source: sourceOf(law, limit),
        };
        continue;
      }
      yield {
        at,
        message: `At ${formatSpacing(on.spacingHz)} spacing the signal (${on.emission}) is ${formatSpacing(on.occupiedHz)} wide; at ${formatFrequency(frequencyHz)} MHz the rules allow ${formatSpacing(limit.maxWidthHz)}.`,
        ...(narrowHz !== undefined && at.at(-1) === 'width' && { suggestion: String(narrowHz / 1000) }),
        source: sourceOf(law, limit),
      };
    }
  },
});
