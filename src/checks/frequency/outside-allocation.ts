import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { listenOnlyAt } from '../../regulations/allocations.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { unheldBand } from '../../regulations/unheld-band.ts';
import { likelyChannelFrequency } from '../likely-channel-frequency.ts';
import { rule } from '../rule.ts';

/** One wrong digit puts a channel among police, aircraft or nobody, and every call on it breaks the law. */
export const frequencyOutsideAllocation = rule({
  id: 'frequency/outside-allocation',
  severity: 'error',
  basis: 'law',
  looksFor: 'A channel whose transmit frequency lies in no service that the country has for a group.',
  why: 'Whoever transmits outside the services open to them does so without a licence, whatever licence they hold. It is nearly always a slip: two digits exchanged, the point moved, one megahertz off.',
  mend: 'Correct the frequency. If the channel is meant for listening alone, write it with `listen`.',
  sources: [
    { document: 'ITU Radio Regulations', section: 'No. 18.1', fromMemory: true },
    { document: '47 CFR part 97', section: '97.301' },
  ],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 164.520, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.520, width: 25 }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      const { part, answer, on, frequencyHz, at } = signal;
      if (part !== 'channel' || answer.may || answer.why !== 'outside') continue;
      if (serviceOf(law, frequencyHz, frequencyHz).length > 0) continue;
      if (listenOnlyAt(law, frequencyHz).length > 0 || unheldBand(law, frequencyHz)) continue;
      const likely = on.published ? undefined : likelyChannelFrequency(law, on, frequencyHz);
      const message = `${formatFrequency(frequencyHz)} MHz lies in no service in which a group may transmit (rules: ${law.country.name})`;
      yield {
        at,
        message: likely
          ? `${message}; ${formatFrequency(likely.frequencyHz)} MHz does (${likely.slip}?).`
          : `${message}.`,
        ...(likely && { suggestion: formatFrequency(likely.frequencyHz) }),
      };
    }
  },
});
