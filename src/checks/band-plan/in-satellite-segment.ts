import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['satellite'];

/** A satellite hears a county at once, and a hand-held on its uplink is relayed to half a continent. */
export const bandPlanInSatelliteSegment = rule({
  id: 'band-plan/in-satellite-segment',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A channel where the band plan keeps the frequency for satellites.',
  why: 'Satellites listen and send there over thousands of kilometres. A local channel disturbs people who cannot even hear it.',
  mend: 'Choose a frequency outside the satellite segments.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 145.900, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
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
