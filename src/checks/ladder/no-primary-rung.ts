import { commonPractice, rule } from '../rule.ts';

/** A ladder that begins with an alternate has lost its first step. */
export const ladderNoPrimaryRung = rule({
  id: 'ladder/no-primary-rung',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A ladder without a primary rung.',
  why: 'The primary is what everybody tries first. Without it members begin at different steps and miss each other.',
  mend: 'Give the first rung the grade primary, or add the rung that is missing.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first: # finding
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: alternate, channel: 1, calls: 3, within: 5 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs:
      - { grade: primary, channel: 1, calls: 3, within: 5 min }
      - { grade: alternate, channel: 3, calls: 3, within: 10 min }
      - { grade: emergency, meet: base, at: next full hour }`,
  *check({ plan }) {
    for (const { id, name, rungs } of plan.ladders.values()) {
      if (!rungs.some(({ grade }) => grade === 'primary'))
        yield {
          at: ['fallbacks', id],
          points: 'key',
          message: `${name} has no primary rung; it begins with ${rungs[0]?.grade ?? 'nothing'}.`,
        };
    }
  },
});
