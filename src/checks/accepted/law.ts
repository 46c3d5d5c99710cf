import { commonPractice, rule } from '../rule.ts';

/** What the law forbids stays forbidden, whatever a group has agreed. */
export const acceptedLaw = rule({
  id: 'accepted/law',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'An accepted finding that is an error of law.',
  why: 'An acceptance records what a group has looked at and keeps by its own choice. The law leaves it no choice, so the error stands and the acceptance does nothing.',
  mend: 'Mend what is found, and remove the acceptance. A permit in writing belongs in the licence, under `authority`.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 148.550, width: 25 }
accepted:
  - { rule: frequency/outside-allocation, at: channels.3, because: Nobody else is there, until: 2027-06-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, idle }) {
    for (const { index, why } of idle) {
      const entry = plan.accepted[index];
      if (!entry || why !== 'law') continue;
      yield {
        at: ['accepted', index],
        message: `\`${entry.rule}\` at \`${entry.at}\` is an error of law, which stays however it is accepted.`,
      };
    }
  },
});
