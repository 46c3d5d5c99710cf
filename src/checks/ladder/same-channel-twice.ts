import { commonPractice, rule } from '../rule.ts';

/** Calling again where nobody answered is not another way. */
export const ladderSameChannelTwice = rule({
  id: 'ladder/same-channel-twice',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'Two rungs that use the same channel in the same way from the same place.',
  why: 'The second repeats what has just failed and costs its time. Another channel, place or mailbox was meant.',
  mend: 'Write the other channel, add `from` with better ground, or remove the rung and raise `calls` of the first.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 1, calls: 3, within: 10 min } # finding
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
      const seen = new Set<string>();
      for (const [index, { channel, from, mailbox, through, other }] of rungs.entries()) {
        if (channel === undefined) continue;
        const way = JSON.stringify([channel, from, mailbox, through, other]);
        if (seen.has(way))
          yield {
            at: ['fallbacks', id, 'rungs', index, 'channel'],
            message: `The rung uses slot ${channel} just as a rung above it does.`,
          };
        seen.add(way);
      }
    }
  },
});
