import { commonPractice, rule } from '../rule.ts';

/** Nobody can answer their own call. */
export const ladderReachSelfOnly = rule({
  id: 'ladder/reach-self-only',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A ladder by which a member is to reach only themself.',
  why: 'The one whose ladder it is and the one to be reached are the same person.',
  mend: 'Name somebody else in `reach`.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: [ada]
    reach: [ada] # finding
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
  *check({ plan, consequences }) {
    if (plan.members.size < 2) return;
    for (const { id, name, who, reach } of plan.ladders.values()) {
      const owners = consequences.membersOf(who);
      const [owner] = owners;
      if (owner === undefined || owners.length > 1 || reach.length === 0) continue;
      if (reach.every((member) => member === owner))
        yield {
          at: ['fallbacks', id, 'reach'],
          message: `${name} is ${plan.members.get(owner)?.name ?? owner}'s ladder to reach only themself.`,
        };
    }
  },
});
