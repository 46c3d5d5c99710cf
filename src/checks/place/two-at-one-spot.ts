import { commonPractice, rule } from '../rule.ts';

/** A position copied with the line above it puts a station where it is not. */
export const placeTwoAtOneSpot = rule({
  id: 'place/two-at-one-spot',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'Two places at the same position.',
  why: 'Every path from one of them is worked out as if from the other. Most often the line was copied and only its name changed.',
  mend: 'Correct the position of one, or make them one place.',
  sources: [commonPractice],
  bad: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6192, -84.2010", kind: high-ground } # finding`,
  good: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }`,
  *check({ plan }) {
    const first = new Map<string, string>();
    for (const { id, name, at } of plan.places.values()) {
      // Four decimals are some ten metres.
      const spot = `${at.latitudeDeg.toFixed(4)}, ${at.longitudeDeg.toFixed(4)}`;
      const before = first.get(spot);
      if (before === undefined) first.set(spot, name);
      else yield { at: ['places', id, 'at'], message: `${name} is where ${before} is, at ${spot}.` };
    }
  },
});
