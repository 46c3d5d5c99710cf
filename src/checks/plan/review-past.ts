import { commonPractice, rule } from '../rule.ts';

/** A plan past its review describes a group that has changed since. */
export const planReviewPast = rule({
  id: 'plan/review-past',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A review date that has passed.',
  why: 'Radios, licences, repeaters and people change. A review date is the promise that somebody looks again; past it nobody knows which line of the plan still holds.',
  mend: 'Go through the plan with the group, raise the revision and set the next review date.',
  sources: [commonPractice],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2025-12-01
  review-by: 2026-11-01 # finding
  timezone: America/New_York
  rules: us
  coordinator: ada`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada`,
  *check({ plan, today }) {
    const { reviewBy, effective } = plan;
    if (reviewBy !== undefined && reviewBy < today && reviewBy >= effective)
      yield {
        at: ['plan', 'review-by'],
        message: `The plan was to be reviewed by ${reviewBy}; today is ${today}.`,
      };
  },
});
