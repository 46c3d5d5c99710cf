import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['weak-signal', 'cw'];

/** FM among weak signals drowns stations that others strain to hear over hundreds of kilometres. */
export const bandPlanInWeakSignalSegment = rule({
  id: 'band-plan/in-weak-signal-segment',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'An FM, AM or packet channel where the band plan keeps the frequency for weak signals or Morse.',
  why: 'In these segments stations work at the edge of hearing with single sideband and Morse. An FM signal covers several of them at once.',
  mend: 'Choose a frequency from the FM simplex segments of the band plan.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 144.250, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    for (const { signal, frequencyHz, row, rows } of keptFor(context)) {
      const { at, on } = signal;
      // A calling frequency belongs to those in whose segment it lies.
      const use = row.use === 'calling' ? rows.find((around) => around.use !== 'calling')?.use : row.use;
      if (use === undefined || !uses.includes(use)) continue;
      if (on.mode !== 'fm' && on.mode !== 'am' && on.mode !== 'packet') continue;
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}.`,
        source: sourceOf(context.law, row),
      };
    }
  },
});
