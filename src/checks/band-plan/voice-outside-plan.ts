import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['image', 'link', 'guard'];

/** Links between stations and television carry no call signs that a listener hears; what is covered there is found out by nobody. */
export const bandPlanVoiceOutsidePlan = rule({
  id: 'band-plan/voice-outside-plan',
  severity: 'warning',
  basis: 'band plan',
  looksFor:
    'A simplex voice channel where the band plan keeps the frequency for images, for links and gateways, or free as guard space.',
  why: 'Somebody’s link may run there day and night, unheard on a set for voice: a call breaks into it, or opens it and is carried to another valley. Guard space is left free to keep neighbours apart.',
  mend: 'Choose a frequency from the simplex segments of the band plan.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 433.550, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 446.025, width: 25 }`,
  *check(context) {
    for (const { signal, frequencyHz, row, rows } of keptFor(context)) {
      if (signal.on.kind !== 'phone' || !uses.includes(row.use)) continue;
      // A spot for pictures in a simplex segment keeps nobody off, nor does the edge at which the segment ends; a gateway is there day and night.
      const atEdge = row.use !== 'link' && (frequencyHz === row.fromHz || frequencyHz === row.toHz);
      if (atEdge && rows.some(({ use }) => use === 'simplex')) continue;
      yield {
        at: signal.at,
        message: `${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}.`,
        source: sourceOf(context.law, row),
      };
    }
  },
});
