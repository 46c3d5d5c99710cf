import { commonPractice, rule } from '../rule.ts';

/** A radio that holds the revision before calls on a channel that has become something else. */
export const recordStaleRadio = rule({
  id: 'record/stale-radio',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A radio whose last clean audit found another revision in it.',
  why: 'Slots mean in it what they meant then. Whoever uses it may call where nobody listens, and nothing on the radio shows it.',
  mend: '`readback compare OLD NEW` says which slots to enter again; then audit the radio once more.',
  sources: [commonPractice],
  bad: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada
  record: radios.json # finding`,
  good: `
plan:
  title: Example
  revision: 1
  effective: 2026-12-01
  review-by: 2027-12-01
  timezone: America/New_York
  rules: us
  coordinator: ada`,
  *check({ held }) {
    const stale = held.filter(({ current }) => !current);
    if (stale.length === 0) return;
    const names = stale.map(
      ({ radio, for: owner, revision, check, date }) =>
        `${owner === '' ? radio : `${radio} of ${owner}`}: revision ${revision}, ${check}, on ${date}`,
    );
    const count = stale.length === 1 ? 'One radio holds' : `${stale.length} radios hold`;
    yield {
      at: ['plan', 'record'],
      message: `${count} another revision by the record (${names.join('; ')}).`,
    };
  },
});
