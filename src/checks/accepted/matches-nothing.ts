import { languageFindings } from '../../plan/language-findings.ts';
import { commonPractice, rule } from '../rule.ts';

/** An acceptance left behind would hide the same mistake when it is made again. */
export const acceptedMatchesNothing = rule({
  id: 'accepted/matches-nothing',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'An accepted finding that no rule makes.',
  why: 'An acceptance whose finding is gone hides the next one of its kind at that place, and makes the list of departures longer than it is.',
  mend: 'Remove the entry, or correct its path.',
  sources: [commonPractice],
  bad: `
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, idle, ruleIds }) {
    for (const { index, why } of idle) {
      const entry = plan.accepted[index];
      if (!entry || why !== 'matches nothing' || !ruleIds.includes(entry.rule)) continue;
      // What is found while reading or drawing cannot be accepted, which is said of the rule.
      if (languageFindings.some(({ id }) => id === entry.rule)) continue;
      yield {
        at: ['accepted', index],
        message: `\`${entry.rule}\` finds nothing at \`${entry.at}\`, so there is nothing to accept.`,
      };
    }
  },
});
