import { commonPractice, rule } from '../rule.ts';

/** A name written twice is often one person too many and another too few. */
export const teamMemberTwice = rule({
  id: 'team/member-twice',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A team that lists a member twice.',
  why: 'The second entry does nothing. Often somebody else was meant.',
  mend: 'Remove it, or write whom you meant.',
  sources: [commonPractice],
  bad: `
teams:
  trail:
    - ben
    - ada
    - ben # finding`,
  good: `
teams:
  trail: [ben, ada]`,
  *check({ plan }) {
    for (const [id, members] of plan.teams) {
      const seen = new Set<string>();
      for (const [index, member] of members.entries()) {
        if (seen.has(member))
          yield { at: ['teams', id, index], message: `The team \`${id}\` lists \`${member}\` twice.` };
        seen.add(member);
      }
    }
  },
});
