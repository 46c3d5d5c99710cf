import { licencesOf } from '../../consequences/licences-of.ts';
import { sourceOf } from '../../regulations/law.ts';
import { groupBy } from '../group-by.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** In a service of personal licences one call sign is one person; twice in a roster it was copied. */
export const licenceFamilySharedOddly = rule({
  id: 'licence/family-shared-oddly',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'One call sign for two members, in a service where each operator has their own.',
  why: 'Some licences cover a family and an amateur licence never does. A call sign that stands twice was copied from one entry to the next, and one of the two is wrong.',
  mend: 'Copy the call sign of each member from their own licence.',
  sources: [{ document: '47 CFR part 97', section: '97.5 and 97.7' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XAA } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    const held = [...licencesOf(plan, law)].filter(
      ({ service, licence }) => service.licence === 'personal' && licence.call !== undefined,
    );
    for (const here of groupBy(held, ({ service, licence }) => `${service.id} ${licence.call}`).values()) {
      const last = here.at(-1);
      if (here.length < 2 || !last) continue;
      yield {
        at: [...last.at, 'call'],
        message: `${last.licence.call} stands for ${listNames(here.map(({ member }) => member.name))}; in the ${last.service.name} each operator has a call sign of their own.`,
        source: sourceOf(law, last.service),
      };
    }
  },
});
