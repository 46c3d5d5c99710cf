import { keptFor } from '../../consequences/kept-for.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import type { BandPlanUse } from '../../regulations/country.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

const uses: readonly BandPlanUse[] = ['packet', 'positions', 'digital'];

/** Packet stations answer whatever they hear by sending over it; voice there is neither heard nor wanted. */
export const bandPlanVoiceOnPacketSegment = rule({
  id: 'band-plan/voice-on-packet-segment',
  severity: 'warning',
  basis: 'band plan',
  looksFor: 'A voice channel where the band plan keeps the frequency for packet or other data.',
  why: 'Automatic stations send there at any moment and do not wait for a voice.',
  mend: 'Choose a frequency from the simplex segments of the band plan.',
  sources: [{ document: 'ARRL band plan' }, { document: 'IARU Region 1 VHF band plan' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 144.390, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check(context) {
    const { mailboxes, digipeaters } = context.plan;
    // There the mode is what is wrong, and is found as that.
    const stations = new Set([...mailboxes.values(), ...digipeaters.values()].map(({ channel }) => channel));
    for (const { signal, frequencyHz, row } of keptFor(context)) {
      const { at, on } = signal;
      if (!uses.includes(row.use)) continue;
      if (on.kind !== 'phone' || stations.has(on.slot)) continue;
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz lies where the band plan has ${row.label}.`,
        source: sourceOf(context.law, row),
      };
    }
  },
});
