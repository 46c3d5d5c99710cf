import { commonPractice, rule } from '../rule.ts';

/** Where a member usually is decides which paths must work. */
export const memberNoPlace = rule({
  id: 'member/no-place',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A member without a usual place.',
  why: 'Without a place no path to the member can be worked out, and no one knows where to look first.',
  mend: 'Add `at` with the place where they usually are.',
  sources: [commonPractice],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld] } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  *check({ plan }) {
    for (const member of plan.members.values()) {
      if (member.at === undefined)
        yield {
          at: ['members', member.id],
          message: `${member.name} has no \`at\`, so no path to them can be worked out.`,
        };
    }
  },
});
