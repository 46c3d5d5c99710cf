import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['repeater-input', 'repeater-output', 'repeater'];

/** A simplex call on a repeater's frequency opens it, or is covered by it; far from the hill neither side knows why. */
export const bandPlanSimplexOnRepeaterFrequency = rule({
  id: 'band-plan/simplex-on-repeater-frequency',
  severity: 'warning',
  basis: 'band plan',
  looksFor:
    'A simplex voice channel where the band plan keeps the frequency for inputs or outputs of repeaters.',
  why: "Somebody's repeater listens or sends there. The group would open it without knowing, or be covered by it on the one day it matters.",
  mend: 'Choose a frequency from the simplex segments of the band plan.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.880, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const { signal, frequencyHz, row } of keptFor(context)) {
      const { at, on } = signal;
      if (!uses.includes(row.use)) continue;
      // Who listens elsewhere and sends on an input works through a repeater, if one that is not listed.
      if (on.receiveHz !== on.transmitHz && row.use !== 'repeater-output') continue;
      if (on.mode === 'packet') continue;
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}.`,
        source: sourceOf(context.law, row),
      };
    }
  },
});
