import { plannedSignals } from '../../consequences/planned-signals.ts';
import { lacksLeave } from '../../consequences/shortfalls.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** Interoperability channels are printed in public guides, and open to nobody without an agency's leave. */
export const licenceAuthorityMissing = rule({
  id: 'licence/authority-missing',
  severity: 'error',
  basis: 'law',
  looksFor:
    "A channel that needs an agency's leave, planned for transmitting, while no member's licence names who gave it.",
  why: 'Public-safety channels are kept clear for those who are sent there. A volunteer group transmits on them only under the licence of an agency that has said so in writing.',
  mend: 'Write the channel with `listen`; or enter the licence of that service with its `authority` on the members it was given to.',
  sources: [{ document: '47 CFR part 90', section: '90.20(a)' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SAR, standard: VSAR16 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SAR, listen: 155.160, width: 12.5 }`,
  *check(context) {
    const { law } = context;
    for (const { part, on, services, at } of plannedSignals(context)) {
      if (part === 'packet station' || part === 'output') continue;
      const service = serviceById(law, services[0] ?? '');
      if (!service || !lacksLeave(context, on)) continue;
      yield {
        at,
        message: `${on.name} is one of the ${service.name} and no member's licence names the agency that gave leave; it takes ${service.mustHold}.`,
        ...(part === 'channel' && { suggestion: `listen: ${formatFrequency(on.receiveHz)}` }),
        source: sourceOf(law, service),
      };
    }
  },
});
