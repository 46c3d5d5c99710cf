import { commonPractice, rule } from '../rule.ts';

/** Members who find a mistake must know whom to tell. */
export const planCoordinatorMissing = rule({
  id: 'plan/coordinator-missing',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A plan that names no coordinator.',
  why: 'Somebody notices a dead repeater or a wrong tone on the first outing. The cards can only say whom to tell if the plan does.',
  mend: 'Add `coordinator` with the id of the member who keeps the plan.',
  sources: [commonPractice],
  bad: `
plan: # finding
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada`,
  *check({ plan }) {
    if (plan.coordinator === undefined && plan.members.size > 0)
      yield {
        at: ['plan'],
        points: 'key',
        message: 'The plan names no `coordinator`: the member who keeps it.',
      };
  },
});
