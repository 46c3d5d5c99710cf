import { commonPractice, rule } from '../rule.ts';

/** A ladder that does not say whom it is to reach cannot be said to have worked. */
export const ladderReachMissing = rule({
  id: 'ladder/reach-missing',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A ladder with radio rungs that names nobody to be reached.',
  why: 'Members call, and nobody is bound to listen. Paths cannot be worked out either.',
  mend: 'Add `reach` with the members of whom any one will do.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first: # finding
    name: First
    who: all
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
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
    for (const { id, name, reach, rungs } of plan.ladders.values()) {
      if (
        reach.length === 0 &&
        rungs.some(({ channel, mailbox }) => channel !== undefined && mailbox === undefined)
      )
        yield {
          at: ['fallbacks', id],
          points: 'key',
          message: `${name} names nobody who is to be reached (\`reach\`).`,
        };
    }
  },
});
