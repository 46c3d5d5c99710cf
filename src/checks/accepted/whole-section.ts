import type { PlanPath } from '../../findings/finding.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

/** Nobody has looked at a repeater that is not written yet. */
export const acceptedWholeSection = rule({
  id: 'accepted/whole-section',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A finding accepted for every entry of a section, those to come included.',
  why: 'What is accepted is what the group has looked at. An acceptance of a whole section takes in the entry that somebody adds next month, and its finding is never shown to anybody.',
  mend: 'Write one entry for each thing that was looked at: `repeaters.gap` in place of `repeaters`.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters, because: An odd split, until: 2027-06-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, departures }) {
    for (const [index, { rule: accepted, at }] of plan.accepted.entries()) {
      const depth = sections.get(at);
      if (depth === undefined) continue;
      const covered = departures.filter((departure) => departure.index === index);
      const entries = new Set(covered.flatMap(({ finding }) => entryOf(finding.path, depth) ?? []));
      if (entries.size === 0) continue;
      const [only, ...others] = entries;
      yield {
        at: ['accepted', index, 'at'],
        message: `\`${at}\` accepts \`${accepted}\` for ${listNames([...entries])}, and for every entry that comes later as well.`,
        ...(only !== undefined && others.length === 0 && { suggestion: only }),
      };
    }
  },
});

/** Sections that hold entries of the group's own, and how many steps lead to one. */
const sections: ReadonlyMap<string, number> = new Map([
  ...[
    'places',
    'radios',
    'members',
    'teams',
    'assets',
    'repeaters',
    'channels',
    'check-ins',
    'fallbacks',
    'trials',
  ].map((section) => [section, 2] as const),
  ...['packet', 'packet.mailboxes', 'packet.digipeaters', 'packet.routes', 'terrain', 'terrain.profiles'].map(
    (section) => [section, 3] as const,
  ),
]);

/** Undefined for what is found of the section itself. */
function entryOf(path: PlanPath, depth: number): string | undefined {
  return path.length < depth ? undefined : path.slice(0, depth).join('.');
}
