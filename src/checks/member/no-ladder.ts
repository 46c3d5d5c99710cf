import { commonPractice, rule } from '../rule.ts';

/** A card that does not say what to try next leaves its owner alone at the first silence. */
export const memberNoLadder = rule({
  id: 'member/no-ladder',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A member who has no ladder and is to be reached by none, where the plan has ladders.',
  why: 'The ladder is what a card is for: what to try, in order, when a call is not answered.',
  mend: 'Add them, or a team they are in, to `who` of a ladder whose channels they hold.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
fallbacks:
  first:
    name: First
    who: [ada]
    reach: [cy]
    rungs: [{ grade: primary, channel: 1, within: 5 min }, { grade: emergency, meet: base, at: next full hour }]
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  cy: { name: Cy Example, licences: { amateur: { class: general, call: KX4XCC, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: # finding
    name: Ben Example
    licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }
    radios: [handheld]
    at: base`,
  good: `
fallbacks:
  first:
    name: First
    who: all
    reach: [ada]
    rungs: [{ grade: primary, channel: 1, within: 5 min }, { grade: emergency, meet: base, at: next full hour }]`,
  *check({ plan, consequences }) {
    if (plan.ladders.size === 0) return;
    // Whoever is to be reached may be where ladders end.
    const covered = new Set(
      [...plan.ladders.values()].flatMap(({ who, reach }) => [...consequences.membersOf(who), ...reach]),
    );
    for (const member of plan.members.values()) {
      if (!covered.has(member.id) && member.radios.length > 0)
        yield {
          at: ['members', member.id],
          points: 'key',
          message: `${member.name} has no ladder: their card cannot say what to try when a call is not answered.`,
        };
    }
  },
});
