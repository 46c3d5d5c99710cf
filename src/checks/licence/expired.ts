import { licencesOf } from '../../consequences/licences-of.ts';
import { sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** A licence that has run out is no licence, and renewals are forgotten for years. */
export const licenceExpired = rule({
  id: 'licence/expired',
  severity: 'error',
  basis: 'law',
  looksFor: 'A licence that has ended by the day the plan takes effect, or by today.',
  why: 'After the last day its holder may not transmit, and cards printed from the plan would say that they may.',
  mend: 'Enter the new date if the licence was renewed; else leave it out until it is.',
  sources: [{ document: '47 CFR', section: '97.21, 97.25 and 95.1705' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2026-08-01 } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2036-08-01 } }, radios: [handheld], at: base }`,
  *check({ plan, law, today }) {
    for (const { member, service, licence, at } of licencesOf(plan, law)) {
      const { expires } = licence;
      if (expires === undefined) continue;
      const day = expires < plan.effective ? plan.effective : today;
      if (expires >= day) continue;
      const when = day === plan.effective ? `the plan takes effect on ${day}` : `today is ${day}`;
      yield {
        at: [...at, 'expires'],
        message: `${member.name}'s licence for the ${service.name} ${expires < today ? 'ended' : 'ends'} on ${expires}; ${when}.`,
        source: sourceOf(law, service),
      };
    }
  },
});
