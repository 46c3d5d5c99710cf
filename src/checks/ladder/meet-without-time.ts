import { commonPractice, rule } from '../rule.ts';

/** Two people who go to one place at different hours do not meet. */
export const ladderMeetWithoutTime = rule({
  id: 'ladder/meet-without-time',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A rung that names a place to meet and no time.',
  why: 'Whoever comes first cannot know how long to wait, and each hour of waiting is an hour without help.',
  mend: 'Add `at`, such as next even hour.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base } # finding`,
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
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { meet, at }] of rungs.entries()) {
        if (meet !== undefined && at === undefined)
          yield {
            at: ['fallbacks', id, 'rungs', index],
            message: `The rung meets at ${plan.places.get(meet)?.name ?? meet}, but does not say when (\`at\`).`,
          };
      }
    }
  },
});
