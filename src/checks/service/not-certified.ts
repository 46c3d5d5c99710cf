import { shortfalls } from '../../consequences/shortfalls.ts';
import { serviceById } from '../../regulations/law.ts';
import { groupBy } from '../group-by.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** A radio that tunes to a channel is not thereby lawful on it: some services ask for a set certified for them. */
export const serviceNotCertified = rule({
  id: 'service/not-certified',
  severity: 'error',
  basis: 'law',
  looksFor:
    'Members who are to transmit in a service that asks for certified equipment, with radios that are not certified for it and no other.',
  why: 'In these services the set is part of the permission. One made for another service may not be used there, even by someone who holds the licence.',
  mend: 'Let these members use a set certified for the service. If the radio is certified and the plan does not say so, add the service to its `certified`.',
  sources: [{ document: '47 CFR part 95', section: '95.335 and 95.1761' }],
  bad: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA }, gmrs: { call: WZZZ401 } }, radios: [handheld], at: base }
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-480], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W, low: 1 W } } # finding
channels:
  1: { name: FAMILY, standard: GMRS 20 }
  3: { name: SIMP, simplex: 146.550, width: 25 }`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA }, gmrs: { call: WZZZ401 } }, radios: [handheld], at: base }
radios:
  handheld: { name: Handheld, transmits: [462-468], receives: [136-174, 400-480], certified: [gmrs], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W, low: 1 W } }
channels:
  1: { name: FAMILY, standard: GMRS 20 }
  3: { name: FAMILY 2, standard: GMRS 19 }`,
  *check(context) {
    const short = shortfalls(context).filter(
      ({ cause, radio }) =>
        cause.code === 'not-certified' &&
        // A service misspelt is found as that.
        radio.certified.every((id) => serviceById(context.law, id)),
    );
    for (const here of groupBy(short, ({ radio, on }) => `${radio.id} ${on.services[0]}`).values()) {
      const [{ radio, on, cause, need }] = here;
      const service = serviceById(context.law, on.services[0] ?? '');
      const channels = listNames(here.map((each) => `${each.on.name} (slot ${each.on.slot})`));
      const members = listNames(here.map(({ member }) => member.name));
      yield {
        at: ['radios', radio.id, 'certified'],
        message: `${radio.name} is not certified for the ${service?.name}, and ${members} would transmit with it on ${channels} in ${need.because}.`,
        ...(cause.source && { source: cause.source }),
      };
    }
  },
});
