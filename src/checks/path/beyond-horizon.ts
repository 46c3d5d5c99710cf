import { callPaths } from '../../consequences/call-paths.ts';
import { formatDistance } from '../../radio/format-quantity.ts';
import { endText } from '../path-words.ts';
import { rule } from '../rule.ts';

const plain = (heightM: number): string => `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  farm: { name: Farm, at: "36.6192, -83.8658", kind: base }
terrain:
  profiles:
    - { from: base, to: farm, heights: [[0, 200], [15, 200], [30, 200]] }
radios:
  base-station:
    name: Base station
    transmits: [144-148]
    receives: [136-174]
    certified: [amateur]
    memories: 1-128
    steps: [5, 12.5, 25]
    widths: [25, 12.5]
    tones: [ctcss, dcs]
    modes: [fm]
    powers: { high: 50 W }
    antenna: { gain: 6 dBd, height: ${heightM} m, carried: mast }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [base-station], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [base-station], at: farm }
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]`;

/** What goes round the bend of the earth does so by grace of the air, which changes with the weather. */
export const pathBeyondHorizon = rule({
  id: 'path/beyond-horizon',
  severity: 'note',
  basis: 'practice',
  needs: 'paths',
  looksFor:
    'A rung without a repeater between places that would not see each other even if all the ground between were as low as its lowest point.',
  why: 'Beyond the radio horizon a path lives on what bends round the earth. The prediction takes that for the median; it rises and falls with the weather more than a path in sight does, and a small lack on either side ends it.',
  mend: 'Raise an antenna, call from higher ground, or go by a repeater or a digipeater; and try it in different weather.',
  sources: [{ document: 'ITU-R P.1812-8', section: '4.3.2, eq (22)' }],
  bad: `${plain(10)}
    rungs:
      - { grade: primary, channel: 3, calls: 3, within: 5 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `${plain(20)}
    rungs:
      - { grade: primary, channel: 3, calls: 3, within: 5 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan, consequences, paths }) {
    if (!paths) return;
    for (const ladder of plan.ladders.values()) {
      const who = consequences.membersOf(ladder.who);
      for (const [index, rung] of ladder.rungs.entries()) {
        const beyond = callPaths(plan, paths, who, rung, ladder.reach).find(
          ({ best: { to, prediction, horizonKm } }) =>
            to.kind === 'member' &&
            prediction.ok &&
            // One that is not expected to close, or hardly, is found as such.
            (prediction.worse.verdict === 'solid' || prediction.worse.verdict === 'likely') &&
            horizonKm !== undefined &&
            prediction.distanceM > 1000 * horizonKm,
        );
        if (!beyond) continue;
        const { best, place } = beyond;
        yield {
          at: ['fallbacks', ladder.id, 'rungs', index],
          message: `From ${plan.places.get(place)?.name ?? place} it is ${formatDistance(best.prediction.distanceM)} to ${endText(plan, best.to)}; the radio horizon of the two antennas is ${formatDistance(1000 * (best.horizonKm ?? 0))} over the lowest ground between.`,
        };
      }
    }
  },
});
