import { nearest } from '../../findings/nearest.ts';
import { languageFindings } from '../../plan/language-findings.ts';
import { commonPractice, rule } from '../rule.ts';

/** A mistyped rule accepts nothing, and its finding keeps standing. */
export const acceptedUnknownRule = rule({
  id: 'accepted/unknown-rule',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'An accepted finding of a rule that does not exist.',
  why: 'An acceptance holds for one rule, named exactly. One that names no rule does nothing.',
  mend: 'Copy the name of the rule from the finding.',
  sources: [commonPractice],
  bad: `
accepted:
  - { rule: offset/unusal, at: repeaters.gap, because: An odd split, until: 2027-06-01 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.5, tone: 100.0, width: 25, place: hill, power: 25 W }
accepted:
  - { rule: offset/unusual, at: repeaters.gap, because: An odd split, until: 2027-06-01 }`,
  *check({ plan, idle, ruleIds }) {
    for (const { index, why } of idle) {
      const entry = plan.accepted[index];
      if (!entry || why !== 'matches nothing') continue;
      const at = ['accepted', index, 'rule'];
      if (languageFindings.some(({ id }) => id === entry.rule)) {
        const when = entry.rule.startsWith('print/') ? 'documents are drawn' : 'the file is read';
        yield { at, message: `\`${entry.rule}\` is found while ${when}, and cannot be accepted.` };
        continue;
      }
      if (ruleIds.includes(entry.rule)) continue;
      const near = nearest(entry.rule, ruleIds);
      const message = `There is no rule \`${entry.rule}\`.`;
      yield near === undefined ? { at, message } : { at, message, suggestion: near };
    }
  },
});
