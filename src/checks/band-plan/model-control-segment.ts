import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['model-control'];

/** A voice on the frequency of a model aircraft takes it out of its pilot's hands. */
export const bandPlanModelControlSegment = rule({
  id: 'band-plan/model-control-segment',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A channel where the band plan keeps the frequency for the radio control of models.',
  why: "A model in the air that loses its pilot's signal can hurt somebody.",
  mend: 'Choose a frequency outside the segments for models.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [50-54, 144-148], receives: [50-54, 136-174], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 50.900, width: 25 } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [50-54, 144-148], receives: [50-54, 136-174], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W } }
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 52.540, width: 25 }`,
  *check(context) {
    for (const { signal, frequencyHz, row } of keptFor(context)) {
      const { at } = signal;
      if (!uses.includes(row.use)) continue;
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}.`,
        source: sourceOf(context.law, row),
      };
    }
  },
});
