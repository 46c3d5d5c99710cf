import { commonPractice, rule } from '../rule.ts';

/** Without a time nobody knows when to give up and go on. */
export const ladderNoTime = rule({
  id: 'ladder/no-time',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A radio rung that does not say when to move on.',
  why: 'One goes on calling for an hour, another gives up after a minute, and the two never meet on a channel.',
  mend: 'Add `within`, such as 10 min.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3 } # finding
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
    for (const { id, rungs } of plan.ladders.values()) {
      for (const [index, { channel, withinMin }] of rungs.entries()) {
        // From the last rung there is nothing to move on to.
        if (channel !== undefined && withinMin === undefined && index < rungs.length - 1)
          yield {
            at: ['fallbacks', id, 'rungs', index],
            message: `The rung on slot ${channel} does not say when to move on (\`within\`).`,
          };
      }
    }
  },
});
