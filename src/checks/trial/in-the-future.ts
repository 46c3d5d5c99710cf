import { commonPractice, rule } from '../rule.ts';

/** A trial that has not happened proves nothing. */
export const trialInTheFuture = rule({
  id: 'trial/in-the-future',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A trial dated after today.',
  why: 'A trial is what was really heard. A date to come is a slip, often in the year, and puts this trial before every newer one.',
  mend: 'Correct the date.',
  sources: [commonPractice],
  bad: `
trials:
  - { date: 2027-11-14, from: base, to: gap, channel: 1, heard: readable } # finding`,
  good: `
trials:
  - { date: 2026-11-14, from: base, to: gap, channel: 1, heard: readable }`,
  *check({ plan, today }) {
    for (const [index, { date }] of plan.trials.entries()) {
      if (date > today)
        yield { at: ['trials', index, 'date'], message: `The trial is dated ${date}; today is ${today}.` };
    }
  },
});
