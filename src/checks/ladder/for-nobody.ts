import { commonPractice, rule } from '../rule.ts';

/** A ladder of nobody is on no card. */
export const ladderForNobody = rule({
  id: 'ladder/for-nobody',
  severity: 'warning',
  basis: 'consistency',
  looksFor: "A ladder that is no member's.",
  why: 'Its `who` leads to nobody, so no card shows it.',
  mend: 'List the teams and members whose ladder it is, or remove it.',
  sources: [commonPractice],
  bad: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs: [{ grade: primary, channel: 1, within: 5 min }, { grade: alternate, channel: 3, within: 5 min }, { grade: emergency, meet: base, at: noon }]
  second:
    name: Second
    who: [] # finding
    reach: [ada]
    rungs: [{ grade: primary, channel: 1, within: 5 min }, { grade: alternate, channel: 3, within: 5 min }, { grade: emergency, meet: base, at: noon }]`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs: [{ grade: primary, channel: 1, within: 5 min }, { grade: alternate, channel: 3, within: 5 min }, { grade: emergency, meet: base, at: noon }]`,
  *check({ plan }) {
    for (const { id, name, who } of plan.ladders.values()) {
      if (who !== 'all' && who.length === 0)
        yield { at: ['fallbacks', id, 'who'], message: `${name} is nobody's ladder.` };
    }
  },
});
