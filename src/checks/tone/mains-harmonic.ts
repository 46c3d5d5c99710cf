import { writtenTones } from '../../consequences/written-tones.ts';
import { mainsHarmonicNear } from '../../radio/ctcss.ts';
import { formatTone } from '../../radio/tone.ts';
import { rule } from '../rule.ts';

/** Hum of the mains that rides on a weak or poorly filtered signal can hold a squelch open at such a tone. */
export const toneMainsHarmonic = rule({
  id: 'tone/mains-harmonic',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A tone within 1.5 % of a harmonic of the mains of the country.',
  why: 'A station run from the mains can carry hum, and a decoder takes hum near its tone for the tone itself.',
  mend: 'Choose another tone where the group may choose; where the keeper of a repeater has set it, accept the finding.',
  sources: [{ document: 'MPT 1306', section: 'list of tones without 100.0 Hz', fromMemory: true }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, tone: 118.8 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, tone: 123.0 }`,
  *check({ plan, law, consequences }) {
    for (const { at, tone } of writtenTones(plan, consequences)) {
      if (tone.kind !== 'ctcss') continue;
      const near = mainsHarmonicNear(tone.tenthsHz, law.country.mainsHz);
      if (!near) continue;
      yield {
        at,
        message: `${formatTone(tone)} Hz stands ${Math.abs(near.differencePercent).toFixed(1)} % from ${near.frequencyHz} Hz, harmonic ${near.order} of the ${law.country.mainsHz} Hz mains.`,
      };
    }
  },
});
