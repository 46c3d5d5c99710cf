import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { listenOnlyAt } from '../../regulations/allocations.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { serviceOf } from '../../regulations/service-of.ts';
import { rule } from '../rule.ts';

/** A marine, aeronautical or weather frequency in a hand-held is one press away from disturbing those it protects. */
export const frequencyListenOnlyTransmitted = rule({
  id: 'frequency/listen-only-transmitted',
  severity: 'error',
  basis: 'law',
  looksFor: 'A marine, aeronautical or weather broadcast frequency planned for transmitting.',
  why: 'These may be listened to and nothing more. In a real emergency the law allows any means, but a plan cannot presume one, and a slip of the thumb would be heard by ships or aircraft.',
  mend: 'Write the channel with `listen`.',
  sources: [
    { document: '47 CFR part 80', section: '80.115' },
    { document: 'FCC Enforcement Advisory 2017-01 (DA 17-747)' },
  ],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, simplex: 162.550, width: 25 } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25 }
  9: { name: WX, listen: 162.550 }`,
  *check(context) {
    const { law } = context;
    for (const { answer, at, part, frequencyHz, services, overshadowed } of plannedSignals(context)) {
      if (part === 'packet station' || overshadowed || answer.may) continue;
      const never = services.map((id) => serviceById(law, id)).find((row) => row?.licence === 'never');
      const open = serviceOf(law, frequencyHz, frequencyHz).some(
        (id) => serviceById(law, id)?.licence !== 'never',
      );
      const [row] = listenOnlyAt(law, frequencyHz);
      if (open || !(row ?? never)) continue;
      const written = formatFrequency(frequencyHz);
      const source = row ?? never;
      yield {
        at,
        message: `${written} MHz is for listening only: ${row?.label ?? never?.name}.`,
        ...(part === 'channel' && { suggestion: `listen: ${written}` }),
        ...(source && { source: sourceOf(law, source) }),
      };
    }
  },
});
