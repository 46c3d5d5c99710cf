import { callPaths } from '../../consequences/call-paths.ts';
import { exampleGround } from '../example-ground.ts';
import { commonPractice, rule } from '../rule.ts';

/** Only a trial proves a path. */
export const pathRungUntried = rule({
  id: 'path/rung-untried',
  severity: 'note',
  basis: 'practice',
  needs: 'paths',
  looksFor: 'A radio rung that was never tried from any place it is meant for.',
  why: 'A ladder is relied on when there is no time to find out. A rung that nobody has tried may fail for reasons no plan shows: a dead antenna, a wrong tone, a ridge.',
  mend: 'Try it on an ordinary day and log the trial: `readback log`.',
  sources: [commonPractice],
  bad: `${exampleGround}
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min } # finding
      - { grade: alternate, channel: 3, from: hill, calls: 3, within: 10 min } # finding
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `${exampleGround}
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: hill, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }
trials:
  - { date: 2026-11-14, from: base, to: gap, channel: 1, heard: readable }
  - { date: 2026-11-14, from: hill, to: base, channel: 3, heard: readable }`,
  *check({ plan, consequences, paths }) {
    if (!paths) return;
    for (const ladder of plan.ladders.values()) {
      for (const [index, rung] of ladder.rungs.entries()) {
        const found = callPaths(plan, paths, consequences.membersOf(ladder.who), rung, ladder.reach);
        if (found.length === 0 || found.some(({ trials }) => trials.length > 0)) continue;
        const places = [...new Set(found.map(({ place }) => plan.places.get(place)?.name ?? place))];
        yield {
          at: ['fallbacks', ladder.id, 'rungs', index],
          message: `Nobody has tried this rung from ${places.join(', ')}.`,
        };
      }
    }
  },
});
