import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['beacon'];

/** Beacons send all day for those who watch how far the band reaches; a channel over them spoils the watch. */
export const bandPlanInBeaconSegment = rule({
  id: 'band-plan/in-beacon-segment',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A channel where the band plan keeps the frequency for beacons.',
  why: 'Beacons send without a pause and many listen for the faintest of them. A channel there is disturbed, and disturbs.',
  mend: 'Choose a frequency from the simplex segments of the band plan.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 144.290, width: 25 } # finding`,
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
