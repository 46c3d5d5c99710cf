import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { rule } from '../rule.ts';

/** A service written beside a frequency decides licences and power; the wrong one makes both wrong. */
export const serviceWithoutFrequency = rule({
  id: 'service/without-frequency',
  severity: 'error',
  basis: 'law',
  looksFor: 'A frequency written with a service that does not have it, while another service does.',
  why: 'The service decides who may transmit, with what licence, radio and power. Under the wrong one every answer is wrong.',
  mend: 'Correct the service, or leave it out where the frequency belongs to one only.',
  sources: [{ document: '47 CFR', section: '95.563, 95.1763, 95.2763 and 97.301' }],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, service: gmrs } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, service: amateur }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      const { part, answer, on, frequencyHz } = signal;
      if (part === 'packet station' || part === 'input' || answer.may || answer.why !== 'outside') continue;
      const owner = part === 'output' ? signal.repeater : on.channel;
      const written = owner.service === undefined ? undefined : serviceById(law, owner.service);
      const having = serviceOf(law, frequencyHz, frequencyHz);
      const [likely] = having;
      if (!written || likely === undefined) continue;
      yield {
        at:
          part === 'output' ? ['repeaters', signal.repeater.id, 'service'] : ['channels', on.slot, 'service'],
        message: `The ${written.name} does not have ${formatFrequency(frequencyHz)} MHz; it belongs to the ${having.map((id) => serviceById(law, id)?.name).join(' and the ')}.`,
        suggestion: likely,
        source: sourceOf(law, written),
      };
    }
  },
});
