import { commonPractice, rule } from '../rule.ts';

/** A radio that holds no channel of the plan is carried for nothing. */
export const memberHoldsNothing = rule({
  id: 'member/holds-nothing',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A member whose radios hold no channel of the plan.',
  why: 'Their card comes out empty: ranges, modes or slots of their radios fit none of the channels.',
  mend: 'Give them another radio, or add a channel that theirs can hold.',
  sources: [commonPractice],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-128, name-length: 7, tones: [ctcss], powers: { high: 5 W } }
  marine: { name: Marine radio, receives: [156-162], memories: 60-88 }
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [marine], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  *check({ plan, consequences }) {
    if (consequences.channels.size === 0) return;
    const empty = new Map<string, boolean>();
    const isEmpty = (radio: string): boolean => {
      const known = empty.get(radio) ?? consequences.slotsOf(radio).length === 0;
      empty.set(radio, known);
      return known;
    };
    for (const member of plan.members.values()) {
      const radios = member.radios.flatMap((id) => plan.radios.get(id) ?? []);
      if (
        radios.length === 0 ||
        radios.length < member.radios.length ||
        !radios.every(({ id }) => isEmpty(id))
      )
        continue;
      const names = radios.map(({ name }) => name).join(', ');
      yield {
        at: ['members', member.id],
        message: `${member.name} holds none of the plan's channels: none fits ${names}.`,
      };
    }
  },
});
