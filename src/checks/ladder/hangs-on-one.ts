import { jointSupport } from '../../consequences/joint-support.ts';
import { dependents } from '../../consequences/supports.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** A second choice on the same hilltop fails in the same storm as the first. */
export const ladderHangsOnOne = rule({
  id: 'ladder/hangs-on-one',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A ladder whose radio rungs all need one station, one place or one supply.',
  why: 'When it fails, all radio rungs fail at once, which is just when the ladder is needed.',
  mend: 'Add a rung that does without it: simplex, from higher ground if need be, or a repeater elsewhere.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, width: 25, place: hill, power: 25 W }
  high: { name: High repeater, call: W4XHI, output: 444.325, offset: 5, tone: 100.0, width: 25, place: hill, power: 25 W }
channels:
  1: { name: GAP, repeater: gap }
  2: { name: HIGH, repeater: high }
fallbacks:
  first: # finding
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 2, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan }) {
    const all = new Map([...dependents(plan)].map((dependent) => [dependent.id, dependent]));
    for (const ladder of plan.ladders.values()) {
      // One radio rung alone is a short ladder, not a second choice that fails with the first.
      if (new Set(ladder.rungs.flatMap(({ channel }) => channel ?? [])).size < 2) continue;
      const shared = jointSupport(plan, all, ladder);
      if (shared.length > 0)
        yield {
          at: ['fallbacks', ladder.id],
          points: 'key',
          message: `Every radio rung of ${ladder.name} needs ${listNames(shared)}.`,
        };
    }
  },
});
