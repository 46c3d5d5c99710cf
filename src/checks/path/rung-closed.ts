import { exampleGround } from '../example-ground.ts';
import { rule } from '../rule.ts';
import { rungsWithVerdict } from '../rungs-with-verdict.ts';

/** A rung that cannot work costs the minutes it says to wait, on the worst day. */
export const pathRungClosed = rule({
  id: 'path/rung-closed',
  severity: 'warning',
  basis: 'practice',
  needs: 'paths',
  looksFor: 'A rung of a ladder whose path is not expected to close from where it is to be tried.',
  why: 'The ladder sends someone to call where the ground is in the way. They lose the time the rung takes, and may wait for an answer that cannot come.',
  mend: 'Choose a place from which the path closes (`readback ground` finds the nearest) or another channel; or try it and log the trial, which counts for more than any prediction.',
  sources: [{ document: 'ITU-R P.526-16', section: '4.5, delta-Bullington' }],
  bad: `${exampleGround}
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: ridge, calls: 3, within: 10 min } # finding
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
      - { grade: emergency, meet: base, at: next full hour }`,
  *check(context) {
    yield* rungsWithVerdict(context, 'no', 'is not expected to close');
  },
});
