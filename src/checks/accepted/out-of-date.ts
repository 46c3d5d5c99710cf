import { commonPractice, rule } from '../rule.ts';

/** Reasons for keeping a finding grow old; the date makes somebody look again. */
export const acceptedOutOfDate = rule({
  id: 'accepted/out-of-date',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'An accepted finding whose last day has passed.',
  why: 'A departure is kept until a day, so that its reason is looked at again. After that day the finding stands as if nobody had accepted it.',
  mend: 'Mend what is found, or give a new day if the reason still holds.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2026-06-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, idle, today }) {
    for (const { index, why } of idle) {
      const entry = plan.accepted[index];
      if (!entry || why !== 'out of date') continue;
      yield {
        at: ['accepted', index, 'until'],
        message: `\`${entry.rule}\` at \`${entry.at}\` was accepted until ${entry.until}; today is ${today}.`,
      };
    }
  },
});
