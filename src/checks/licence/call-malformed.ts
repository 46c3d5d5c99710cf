import { licencesOf } from '../../consequences/licences-of.ts';
import type { Observation } from '../../findings/finding.ts';
import { parseCallSign } from '../../radio/call-sign.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { rule } from '../rule.ts';

/** A call sign is copied from the card to the air; a letter that slipped is said wrongly by everybody. */
export const licenceCallMalformed = rule({
  id: 'licence/call-malformed',
  severity: 'warning',
  basis: 'law',
  looksFor: 'An amateur call sign that does not have the form of one.',
  why: 'Amateur call signs everywhere have a prefix, a figure and a suffix that ends in a letter. What does not is mistyped, or belongs to another service.',
  mend: 'Copy it again from the licence.',
  sources: [{ document: 'ITU Radio Regulations', section: 'Article 19, Nos. 19.68 and 19.69' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KXAAX } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    for (const { service, licence, at } of licencesOf(plan, law)) {
      if (service.id === 'amateur') yield* complaint([...at, 'call'], licence.call);
    }
    for (const repeater of plan.repeaters.values()) {
      if (serviceOf(law, repeater.outputHz, repeater.outputHz)[0] === 'amateur')
        yield* complaint(['repeaters', repeater.id, 'call'], repeater.call);
    }
  },
});

function* complaint(at: Observation['at'], call: string | undefined): Generator<Observation> {
  const reading = call === undefined ? undefined : parseCallSign(call);
  if (!reading || reading.ok) return;
  const { message, suggestion } = reading;
  yield suggestion === undefined ? { at, message } : { at, message, suggestion };
}
