import { licencesOf } from '../../consequences/licences-of.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Without the class nobody can say where its holder may transmit, so the cards would say nowhere. */
export const licenceClassMissing = rule({
  id: 'licence/class-missing',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A licence without its class, in a service whose privileges go by class.',
  why: 'Nothing is guessed: without a class the member is taken to hold no privilege at all, and their card shows every channel as one to listen to.',
  mend: 'Add the class that stands on the licence.',
  sources: [{ document: '47 CFR part 97', section: '97.301' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { call: KX4XAA } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    for (const { member, service, licence, at } of licencesOf(plan, law)) {
      if (service.classes.length === 0 || licence.class !== undefined) continue;
      yield {
        at,
        message: `${member.name}'s licence for the ${service.name} has no class; write one of ${service.classes.map(({ id }) => id).join(', ')}.`,
        source: sourceOf(law, service),
      };
    }
  },
});
