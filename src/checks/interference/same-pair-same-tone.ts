import type { Plan, Repeater } from '../../plan/model.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { formatTone, sameSignal } from '../../radio/tone.ts';
import { commonPractice, rule } from '../rule.ts';

/** One call opens both repeaters, and both answer at once. */
export const interferenceSamePairSameTone = rule({
  id: 'interference/same-pair-same-tone',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'Two repeaters within reach of each other on one pair of frequencies with the same tone.',
  why: 'Whoever is between them opens both; whoever listens between them hears both, one over the other. The tone was to keep them apart.',
  mend: 'Give one of them another tone, and ask the coordinator why they share a pair.',
  sources: [commonPractice],
  bad: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: base, power: 25 W } # finding
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
repeaters:
  north: { name: North repeater, call: W4XNO, output: 146.94, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  south: { name: South repeater, call: W4XSO, output: 146.94, offset: -0.6, tone: 123.0, width: 25, place: base, power: 25 W }
channels:
  1: { name: NORTH, repeater: north }
  2: { name: SOUTH, repeater: south }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  *check({ plan }) {
    const alike = new Map<string, Repeater[]>();
    for (const repeater of plan.repeaters.values()) {
      const key = `${repeater.outputHz} ${repeater.inputHz}`;
      const before = alike.get(key) ?? [];
      const other = before.find(
        ({ tone, place }) => sameSignal(tone, repeater.tone) && near(plan, place, repeater.place),
      );
      if (other) {
        const tone = repeater.tone ? `the tone ${formatTone(repeater.tone)}` : 'no tone';
        yield {
          at: ['repeaters', repeater.id, repeater.tone ? 'tone' : 'output'],
          message: `${repeater.name} and ${other.name} share ${formatFrequency(repeater.outputHz)} MHz, ${formatFrequency(repeater.inputHz)} MHz and ${tone}.`,
        };
      }
      // Some that differ are enough to tell later ones from.
      if (before.length < 20) before.push(repeater);
      alike.set(key, before);
    }
  },
});

/** Repeaters of one pair are kept about a hundred miles apart (common practice). */
const apartM = 160_000;

/** Within reach of the same listener; so taken where a place is not known. Good to half a percent, which the limit is not. */
function near(plan: Plan, one: string | undefined, other: string | undefined): boolean {
  const a = one === undefined ? undefined : plan.places.get(one)?.at;
  const b = other === undefined ? undefined : plan.places.get(other)?.at;
  if (!a || !b) return true;
  const rad = Math.PI / 180;
  const haversine = (angleDeg: number): number => Math.sin((angleDeg * rad) / 2) ** 2;
  const h =
    haversine(b.latitudeDeg - a.latitudeDeg) +
    Math.cos(a.latitudeDeg * rad) *
      Math.cos(b.latitudeDeg * rad) *
      haversine(b.longitudeDeg - a.longitudeDeg);
  return 2 * 6_371_009 * Math.asin(Math.sqrt(h)) < apartM;
}
