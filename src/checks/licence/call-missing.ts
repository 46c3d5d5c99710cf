import { licencesOf } from '../../consequences/licences-of.ts';
import { identificationSource } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** The roll call and the card are where a call sign is read from when it must be said. */
export const licenceCallMissing = rule({
  id: 'licence/call-missing',
  severity: 'warning',
  basis: 'practice',
  looksFor: 'A licence without a call sign, in a service whose stations identify by one.',
  why: 'Stations of such a service must say their call sign. Where the plan does not hold it, neither the roll-call sheet nor the card can show it.',
  mend: 'Add `call` with the call sign that stands on the licence.',
  sources: [{ document: '47 CFR', section: '97.119 and 95.1751' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    for (const { member, service, licence, at } of licencesOf(plan, law)) {
      // An agency that gives leave also says how to identify.
      if (!service.callSigns || service.licence === 'authority' || licence.call !== undefined) continue;
      yield {
        at,
        message: `${member.name}'s licence for the ${service.name} has no call sign.`,
        source: identificationSource(law, service),
      };
    }
  },
});
