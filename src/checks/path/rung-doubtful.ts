import { exampleGround } from '../example-ground.ts';
import { rule } from '../rule.ts';
import { rungsWithVerdict } from '../rungs-with-verdict.ts';

/** A doubtful rung may be right to keep; nobody should rely on it untried. */
export const pathRungDoubtful = rule({
  id: 'path/rung-doubtful',
  severity: 'note',
  basis: 'practice',
  needs: 'paths',
  looksFor: 'A rung of a ladder whose path may or may not close, and on which nobody was heard.',
  why: 'The prediction leaves it open. A trial settles in a few minutes, on a dry day, what no reckoning can.',
  mend: 'Try it from that place and log what was heard, or move the rung to better ground.',
  sources: [{ document: 'ITU-R P.526-16', section: '4.5, delta-Bullington' }],
  bad: `${exampleGround}
fallbacks:
  first:
    name: First
    who: [ben]
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, from: hollow, calls: 3, within: 10 min } # finding
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
    yield* rungsWithVerdict(context, 'doubtful', 'is doubtful');
  },
});
