import { serviceById, sourceOf } from '../../regulations/law.ts';
import { listNames } from '../list-names.ts';
import { rule } from '../rule.ts';

/** A set that covers every band looks like the answer for a mixed group, and no such set can be certified. */
export const serviceCertifiedForBoth = rule({
  id: 'service/certified-for-both',
  severity: 'error',
  basis: 'law',
  looksFor: 'One radio that the plan calls certified for two services whose equipment the rules keep apart.',
  why: 'A transmitter that also works in the amateur service cannot be certified for GMRS, nor used on CB, and an FRS unit must not be able to transmit anywhere else. A set that can do both lacks one of the certificates, and whoever transmits with it there does so unlawfully.',
  mend: 'Look at the label of the set: keep in `certified` the service that it names, and give members a second set for the other.',
  sources: [{ document: '47 CFR part 95', section: '95.587(b), 95.935 and 95.1761' }],
  bad: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-480], receives: [136-174, 400-480], certified: [amateur, gmrs], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W, low: 1 W } } # finding`,
  good: `
radios:
  handheld: { name: Handheld, transmits: [144-148, 420-480], receives: [136-174, 400-480], certified: [amateur], memories: 1-128, widths: [25, 12.5], tones: [ctcss], powers: { high: 5 W, low: 1 W } }`,
  *check({ plan, law }) {
    for (const { id: radio, name, certified } of plan.radios.values()) {
      for (const id of new Set(certified)) {
        const service = serviceById(law, id);
        const apart = service?.certifiedApart;
        const others = apart?.from.filter((other) => certified.includes(other)) ?? [];
        if (!service || !apart || others.length === 0) continue;
        const names = listNames(others.map((other) => `the ${serviceById(law, other)?.name ?? other}`));
        yield {
          at: ['radios', radio, 'certified'],
          message: `${name} is said to be certified for the ${service.name} and for ${names} as well; a set for the one cannot work in the other.`,
          source: sourceOf(law, apart),
        };
      }
    }
  },
});
