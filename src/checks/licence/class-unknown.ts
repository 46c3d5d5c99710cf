import { licencesOf } from '../../consequences/licences-of.ts';
import { nearest } from '../../findings/nearest.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** A class that the country does not have gives no privileges, and its holder would be shown as a listener. */
export const licenceClassUnknown = rule({
  id: 'licence/class-unknown',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A licence class that the service does not have.',
  why: 'Privileges go by class. One that is misspelt or belongs to another country leaves its holder with none.',
  mend: 'Write the class as the message lists it.',
  sources: [{ document: '47 CFR part 97', section: '97.9(a) and 97.301' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: generel, call: KX4XAA } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    for (const { service, licence, at } of licencesOf(plan, law)) {
      const classes = service.classes.map(({ id }) => id);
      const held = licence.class;
      if (held === undefined || classes.length === 0 || classes.includes(held)) continue;
      const byName = service.classes.find(({ name }) => name.toLowerCase() === held)?.id;
      const near = byName ?? nearest(held, classes);
      yield {
        at: [...at, 'class'],
        message: `The ${service.name} has no class \`${held}\`; its classes are ${classes.join(', ')}.`,
        ...(near !== undefined && { suggestion: near }),
        source: sourceOf(law, service),
      };
    }
  },
});
