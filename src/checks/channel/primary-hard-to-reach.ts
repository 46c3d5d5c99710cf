import { commonPractice, rule } from '../rule.ts';

/** The first call is made by feel, in the dark, with cold hands. */
export const channelPrimaryHardToReach = rule({
  id: 'channel/primary-hard-to-reach',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A first rung whose channel has more than nine others before it in a radio that holds it.',
  why: 'People count clicks of the knob from its stop. The channel that everybody turns to first should need few of them.',
  mend: 'Give the first channel of the ladder a low slot.',
  sources: [commonPractice],
  bad: `
channels:
  2: { name: CH 2, simplex: 147.430, width: 25, use: Working channel }
  3: { name: CH 3, simplex: 147.445, width: 25, use: Working channel }
  4: { name: CH 4, simplex: 147.460, width: 25, use: Working channel }
  5: { name: CH 5, simplex: 147.475, width: 25, use: Working channel }
  6: { name: CH 6, simplex: 147.490, width: 25, use: Working channel }
  7: { name: CH 7, simplex: 147.505, width: 25, use: Working channel }
  8: { name: CH 8, simplex: 147.520, width: 25, use: Working channel }
  9: { name: CH 9, simplex: 147.535, width: 25, use: Working channel }
  10: { name: CH 10, simplex: 147.550, width: 25, use: Working channel }
  11: { name: CH 11, simplex: 147.565, width: 25, use: Working channel }
  12: { name: SIMP, simplex: 146.550, width: 25 }
check-ins:
  morning: { name: Morning check-in, channel: 12, days: every day, at: "07:30", who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 12, calls: 3, within: 5 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
channels:
  2: { name: CH 2, simplex: 147.430, width: 25, use: Working channel }
  3: { name: CH 3, simplex: 147.445, width: 25, use: Working channel }
  4: { name: CH 4, simplex: 147.460, width: 25, use: Working channel }
  5: { name: CH 5, simplex: 147.475, width: 25, use: Working channel }
  6: { name: CH 6, simplex: 147.490, width: 25, use: Working channel }
  7: { name: CH 7, simplex: 147.505, width: 25, use: Working channel }
  8: { name: CH 8, simplex: 147.520, width: 25, use: Working channel }
  9: { name: CH 9, simplex: 147.535, width: 25, use: Working channel }
  10: { name: CH 10, simplex: 147.550, width: 25, use: Working channel }
  11: { name: CH 11, simplex: 147.565, width: 25, use: Working channel }
  1: { name: SIMP, simplex: 146.550, width: 25 }
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan, consequences }) {
    const places = new Map<string, ReadonlyMap<number, number>>();
    const placeOn = (radio: string, slot: number): number => {
      const known =
        places.get(radio) ?? new Map(consequences.slotsOf(radio).map((held, index) => [held, index]));
      places.set(radio, known);
      return known.get(slot) ?? 0;
    };
    for (const { id, who, rungs } of plan.ladders.values()) {
      const index = rungs.findIndex(({ channel }) => channel !== undefined);
      const slot = rungs[index]?.channel;
      if (slot === undefined) continue;
      const radios = new Set(
        consequences.membersOf(who).flatMap((member) => plan.members.get(member)?.radios ?? []),
      );
      const before = Math.max(...[...radios].map((radio) => placeOn(radio, slot)));
      if (before > mostBefore)
        yield {
          at: ['fallbacks', id, 'rungs', index, 'channel'],
          message: `The first call is on slot ${slot}, which has ${before} other channels before it; at most ${mostBefore} can be counted by hand.`,
        };
    }
  },
});

/** Clicks of the knob that people still count without looking (common practice). */
const mostBefore = 9;
