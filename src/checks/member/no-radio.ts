import { commonPractice, rule } from '../rule.ts';

/** A member without a radio gets an empty card and is expected on the air all the same. */
export const memberNoRadio = rule({
  id: 'member/no-radio',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A member who holds no radio.',
  why: 'A check-in waits for them, and a ladder may lead to them, but they hold nothing to hear it with.',
  mend: 'List the radios they hold, or take them off the roster until they have one.',
  sources: [commonPractice],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  *check({ plan }) {
    for (const member of plan.members.values()) {
      if (member.radios.length === 0)
        yield {
          at: ['members', member.id],
          message: `${member.name} holds no radio, so their card has no channels.`,
        };
    }
  },
});
