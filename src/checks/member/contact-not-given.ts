import { commonPractice, rule } from '../rule.ts';

/** A promise to print a contact that is not there prints nothing. */
export const memberContactNotGiven = rule({
  id: 'member/contact-not-given',
  severity: 'note',
  basis: 'consistency',
  looksFor: 'A member whose contact is shared and not given.',
  why: '`contact-shared: true` lets documents print how to reach the member, but the plan does not say how.',
  mend: 'Add `contact`, or remove `contact-shared`.',
  sources: [commonPractice],
  bad: `
members:
  ada:
    name: Ada Example
    licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }
    radios: [handheld]
    at: base
    contact-shared: true # finding
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  good: `
members:
  ada:
    name: Ada Example
    licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }
    radios: [handheld]
    at: base
    contact: { phone: 555-0100 }
    contact-shared: true
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  *check({ plan }) {
    for (const member of plan.members.values()) {
      if (member.contactShared && member.contact.size === 0)
        yield {
          at: ['members', member.id, 'contact-shared'],
          message: `${member.name} shares a contact that the plan does not give.`,
        };
    }
  },
});
