import { licencesOf } from '../../consequences/licences-of.ts';
import { addDays } from '../../schedule/calendar-date.ts';
import { commonPractice, rule } from '../rule.ts';

/** How long a renewal is allowed to take where nobody has said how long the cards will be carried, days. */
const threeMonths = 90;

/** Renewals take weeks; the group's own review date is the last day to think of one. */
export const licenceExpiresSoon = rule({
  id: 'licence/expires-soon',
  severity: 'note',
  basis: 'practice',
  looksFor:
    'A licence that ends while this revision of the plan is in use: before its review date, or within three months where it has none.',
  why: 'The cards would still be carried when their holder may no longer transmit.',
  mend: 'Remind the member to renew in time, and enter the new date.',
  sources: [commonPractice],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2027-02-01 } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }`,
  *check({ plan, law, today }) {
    const [, inUse = today] = [today, plan.effective].sort();
    const review = plan.reviewBy !== undefined && plan.reviewBy >= today ? plan.reviewBy : undefined;
    for (const { member, service, licence, at } of licencesOf(plan, law)) {
      const { expires } = licence;
      if (expires === undefined || expires < plan.effective || expires < today) continue;
      if (expires >= (review ?? addDays(inUse, threeMonths))) continue;
      const why =
        review === undefined
          ? `and the plan, in use from ${plan.effective}, has no review ahead`
          : `before the plan is reviewed on ${review}`;
      yield {
        at: [...at, 'expires'],
        message: `${member.name}'s licence for the ${service.name} ends on ${expires}, ${why}.`,
      };
    }
  },
});
