import { writtenTones } from '../../consequences/written-tones.ts';
import { ctcssTones, separationPercent } from '../../radio/ctcss.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { formatTone } from '../../radio/tone.ts';
import { groupBy } from '../group-by.ts';
import { rule } from '../rule.ts';

/** Closest pair of the older 38 tones, which decoders were built to tell apart; later sets squeezed tones between them. */
const leastPercent = Math.min(
  ...ctcssTones
    .filter(({ set }) => set === 38)
    .flatMap(({ tenthsHz }, index, tones) => {
      const next = tones[index + 1];
      return next ? [separationPercent(tenthsHz, next.tenthsHz)] : [];
    }),
);

/** Two tones too close on one frequency open each other's squelch, and both parties hear what is not for them. */
export const toneNeighbouringTones = rule({
  id: 'tone/neighbouring-tones',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'Two different tones on one frequency that stand closer than the 38 tones which decoders were made for.',
  why: 'A decoder answers to a small stretch about its tone. Of two tones inside it, each opens for the other.',
  mend: 'Take one of the two further away; tones of one published group are safe beside each other.',
  sources: [{ document: 'TIA-603-D (2009)', section: '1.3.5.2' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EAST, simplex: 146.550, width: 25, tone: 162.2 }
  4: { name: WEST, simplex: 146.550, width: 25, tone: 159.8 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EAST, simplex: 146.550, width: 25, tone: 162.2 }
  4: { name: WEST, simplex: 146.550, width: 25, tone: 173.8 }`,
  *check({ plan, consequences }) {
    const tones = [...writtenTones(plan, consequences)].flatMap(({ at, tone, name, frequencyHz }, index) =>
      tone.kind === 'ctcss' && frequencyHz !== undefined
        ? [{ at, tone, name, frequencyHz, index, tenthsHz: tone.tenthsHz }]
        : [],
    );
    for (const [frequencyHz, here] of groupBy(tones, (each) => each.frequencyHz)) {
      const rising = here.toSorted((a, b) => a.tenthsHz - b.tenthsHz);
      for (const [index, lower] of rising.entries()) {
        const upper = rising[index + 1];
        if (!upper || upper.tenthsHz === lower.tenthsHz) continue;
        const apart = separationPercent(lower.tenthsHz, upper.tenthsHz);
        if (apart >= leastPercent) continue;
        const [earlier, later] = lower.index < upper.index ? [lower, upper] : [upper, lower];
        yield {
          at: later.at,
          message: `${formatTone(later.tone)} Hz stands ${apart.toFixed(1)} % from the ${formatTone(earlier.tone)} Hz of ${earlier.name}, both at ${formatFrequency(frequencyHz)} MHz; decoders may not tell them apart.`,
        };
      }
    }
  },
});
