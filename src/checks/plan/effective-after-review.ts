import { commonPractice, rule } from '../rule.ts';

/** Dates changed about in the head of the plan make every reminder wrong. */
export const planEffectiveAfterReview = rule({
  id: 'plan/effective-after-review',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A review date before the day the plan takes effect.',
  why: 'A plan cannot be due for review before it holds. One of the two dates is a slip, often in its year.',
  mend: 'Correct the date that is wrong.',
  sources: [commonPractice],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2026-06-01 # finding
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
  *check({ plan }) {
    const { reviewBy, effective } = plan;
    if (reviewBy !== undefined && reviewBy < effective)
      yield {
        at: ['plan', 'review-by'],
        message: `The review date ${reviewBy} lies before ${effective}, when the plan takes effect.`,
      };
  },
});
