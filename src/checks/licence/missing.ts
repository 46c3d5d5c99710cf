import { shortfalls } from '../../consequences/shortfalls.ts';
import { serviceById } from '../../regulations/law.ts';
import { groupBy } from '../group-by.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** A name on a roll call makes its bearer transmit; without a licence that is unlawful, whoever owns the radio. */
export const licenceMissing = rule({
  id: 'licence/missing',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A member who is to transmit in a check-in or on a ladder and holds no licence for any service of its channel.',
  why: 'The plan tells this member to transmit. Without a licence of their own, or of their family where that is enough, they may only listen.',
  mend: 'Enter the licence they hold, or call them on a channel that needs none. To let them listen, leave them out of `who` (left out, it means all) and give them a check-in with `listen: true`.',
  sources: [
    { document: 'ITU Radio Regulations', section: 'No. 18.1', fromMemory: true },
    { document: '47 CFR', section: '97.5 and 95.305' },
  ],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA, expires: 2033-02-01 } }, radios: [handheld], at: base }
  ben: { name: Ben Example, licences: { amateur: { class: technician, call: KX4XBB } }, radios: [handheld], at: base }`,
  *check(context) {
    const { law } = context;
    const short = shortfalls(context).filter(
      ({ cause: { code }, need }) => (code === 'unlicensed' || code === 'needs-authority') && !need.controlAt,
    );
    const groups = groupBy(short, ({ member, on }) => `${member.id} ${on.services[0]}`);
    for (const here of groups.values()) {
      const [{ member, on, need, cause }] = here;
      const service = serviceById(law, on.services[0] ?? '');
      const channels = listNames(here.map((each) => `${each.on.name} (slot ${each.on.slot})`));
      yield {
        at: ['members', member.id, 'licences'],
        message: `${member.name} is to transmit on ${channels} in ${need.because} and holds no licence for the ${service?.name}; it takes ${service?.mustHold}.`,
        ...(cause.source && { source: cause.source }),
      };
    }
  },
});
