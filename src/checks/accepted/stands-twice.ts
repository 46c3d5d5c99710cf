import { commonPractice, rule } from '../rule.ts';

/** Two entries for one finding: whoever mends one of them later changes nothing, and cannot see why. */
export const acceptedStandsTwice = rule({
  id: 'accepted/stands-twice',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'An accepted finding that another entry accepts as well.',
  why: 'Of two entries for the same finding only one holds, the narrower or the first. The other can be given a new reason or a new day, and nothing follows from it.',
  mend: 'Keep the one whose reason and day hold, and remove the other.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }
  - { rule: offset/unusual, at: repeaters.gap, because: Coordinated so, until: 2027-03-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, idle }) {
    for (const doubled of idle) {
      if (doubled.why !== 'accepted already') continue;
      const [entry, other] = [plan.accepted[doubled.index], plan.accepted[doubled.by]];
      if (!entry || !other) continue;
      yield {
        at: ['accepted', doubled.index],
        message:
          entry.at === other.at
            ? `\`${entry.rule}\` at \`${entry.at}\` stands twice; another entry accepts it until ${other.until}.`
            : `What \`${entry.rule}\` finds at \`${entry.at}\` is accepted already at \`${other.at}\`, until ${other.until}.`,
      };
    }
  },
});
