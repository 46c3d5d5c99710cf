import { commonPractice, rule } from '../rule.ts';

/** Someone whom nobody expects to hear from is missed last. */
export const memberNoCheckIn = rule({
  id: 'member/no-check-in',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A member who is expected at no check-in, where the plan has check-ins.',
  why: 'A check-in is how a group learns that somebody does not answer. Nobody notices the silence of a member who is in none.',
  mend: 'Add them, or a team they are in, to `who` of a check-in on a channel they hold.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", who: [ada], control: [ada], missed: first }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: # finding
    name: Ben Example
    licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }
    radios: [handheld]
    at: base`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", who: all, control: [ada], missed: first }`,
  *check({ plan, consequences }) {
    if (plan.checkIns.size === 0) return;
    const expected = new Set(
      [...plan.checkIns.values()].flatMap(({ who, control }) => [...consequences.membersOf(who), ...control]),
    );
    for (const member of plan.members.values()) {
      if (!expected.has(member.id) && member.radios.length > 0)
        yield {
          at: ['members', member.id],
          points: 'key',
          message: `${member.name} is expected at no check-in.`,
        };
    }
  },
});
