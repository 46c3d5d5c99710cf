import { writtenTones } from '../../consequences/written-tones.ts';
import type { PlanPath } from '../../findings/finding.ts';
import { canonicalSignal } from '../../radio/dcs.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { formatTone } from '../../radio/tone.ts';
import { groupBy } from '../group-by.ts';
import { rule } from '../rule.ts';

/** Upside down, a digital code is another code of the list: two groups that think themselves apart share one squelch. */
export const toneDcsInverseInUse = rule({
  id: 'tone/dcs-inverse-in-use',
  severity: 'warning',
  basis: 'practice',
  looksFor:
    'Two digital codes on one frequency of which one is the other upside down, or the same signal by another name.',
  why: 'Every code sent inverted reads as another code. D023N and D047I, say, are one signal: each opens the squelch of the other. D023N and D047N are so to every radio whose polarity is turned over, by a menu or by a stage that inverts.',
  mend: 'Give one of the two a code that is neither the other nor its inverse.',
  sources: [{ document: 'TIA-603-D (2009)', section: '1.3.5.5' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EAST, simplex: 146.550, width: 25, tone: D023N }
  4: { name: WEST, simplex: 146.550, width: 25, tone: D047I } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: EAST, simplex: 146.550, width: 25, tone: D023N }
  4: { name: WEST, simplex: 146.550, width: 25, tone: D025N }`,
  *check({ plan, consequences }) {
    const codes = writtenTones(plan, consequences).flatMap(({ at, tone, name, frequencyHz }) =>
      tone.kind === 'dcs' && frequencyHz !== undefined
        ? [
            {
              at,
              tone,
              name,
              frequencyHz,
              signal: canonicalSignal(tone.code, tone.inverted),
              upsideDown: canonicalSignal(tone.code, !tone.inverted),
            },
          ]
        : [],
    );
    const pair = (each: (typeof codes)[number]) => Math.min(each.signal, each.upsideDown);
    for (const here of groupBy(codes, (each) => `${each.frequencyHz} ${pair(each)}`).values()) {
      const [first] = here;
      for (const { at, tone, frequencyHz, signal } of here) {
        const [own, other] = [formatTone(tone), formatTone(first.tone)];
        if (own === other || isOneEntry(at, first.at)) continue;
        const both = `both at ${formatFrequency(frequencyHz)} MHz`;
        yield {
          at,
          message:
            signal === first.signal
              ? `${own} is the same signal as the ${other} of ${first.name}, ${both}.`
              : `${own} is the ${other} of ${first.name} upside down, ${both}: a radio with the wrong polarity opens to it.`,
        };
      }
    }
  },
});

/** A channel may well send one code and open to another. */
function isOneEntry(a: PlanPath, b: PlanPath): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
