import { commonPractice, rule } from '../rule.ts';

/** A plan without a review date is used until it fails. */
export const planReviewMissing = rule({
  id: 'plan/review-missing',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A plan without a review date.',
  why: 'Radios, licences, repeaters and people change within a year. Without a date nobody is reminded to look.',
  mend: 'Add `review-by`, six to twelve months after the plan takes effect.',
  sources: [commonPractice],
  bad: `
plan: # finding
  title: Example
  revision: 1
  effective: 2026-12-01
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
    if (plan.reviewBy !== undefined) return;
    yield {
      at: ['plan'],
      points: 'key',
      message: `The plan has no \`review-by\`: the day by which it is looked at again, after ${plan.effective}.`,
    };
  },
});
