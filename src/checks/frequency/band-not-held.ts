import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { listenOnlyAt } from '../../regulations/allocations.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { unheldBand } from '../../regulations/unheld-band.ts';
import { rule } from '../rule.ts';

/** Rules that were read only in part must not call a band forbidden of which they say nothing. */
export const frequencyBandNotHeld = rule({
  id: 'frequency/band-not-held',
  severity: 'warning',
  basis: 'law',
  looksFor: 'A channel or repeater in an amateur band of which these rules hold nothing.',
  why: 'The tables of a country hold the bands whose rules were found. Of the others nothing is known here: neither who may transmit, nor how. Cards show such a channel as one to listen to.',
  mend: 'Read your licence. If the band is yours, add its rows in a rules file of the whole country; otherwise take a band that is held.',
  sources: [{ document: 'ITU Radio Regulations', section: 'Article 5', fromMemory: true }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 2305.000, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 1294.500, width: 25 }`,
  *check(context) {
    const { law } = context;
    const told = new Set<string>();
    for (const signal of plannedSignals(context)) {
      const { part, answer, frequencyHz, at } = signal;
      if (part === 'packet station' || answer.may || answer.why !== 'outside') continue;
      if (serviceOf(law, frequencyHz, frequencyHz).length > 0) continue;
      // An input that left the band of its output is found as that.
      if (part === 'input' && serviceOf(law, signal.repeater.outputHz, signal.repeater.outputHz).length > 0)
        continue;
      const band = unheldBand(law, frequencyHz);
      if (!band || listenOnlyAt(law, frequencyHz).length > 0) continue;
      const whose = part === 'channel' ? at.join('.') : signal.repeater.id;
      if (told.has(whose)) continue;
      told.add(whose);
      yield {
        at,
        message: `${formatFrequency(frequencyHz)} MHz lies in the ${band.name} amateur band, of which these rules (${law.country.name}) hold nothing; nobody is shown as transmitting there.`,
      };
    }
  },
});
