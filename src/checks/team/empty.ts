import { commonPractice, rule } from '../rule.ts';

/** A team of nobody makes every entry that names it empty. */
export const teamEmpty = rule({
  id: 'team/empty',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A team without members.',
  why: "A check-in or a ladder of an empty team is nobody's, and nothing on paper shows it.",
  mend: 'List its members, or remove the team where it is used.',
  sources: [commonPractice],
  bad: `
teams:
  trail: [] # finding`,
  good: `
teams:
  trail: [ben]`,
  *check({ plan }) {
    for (const [id, members] of plan.teams) {
      if (members.length === 0) yield { at: ['teams', id], message: `The team \`${id}\` has no members.` };
    }
  },
});
