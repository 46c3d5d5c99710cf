import { reversedPair } from '../../consequences/reversed-pair.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { sourceOf } from '../../regulations/law.ts';
import { usualOffset } from '../../regulations/usual-offset.ts';
import { rule } from '../rule.ts';

/** Lists give a pair from the repeater's side or from the user's; taken from the wrong one, nobody hears anything. */
export const repeaterPairReversed = rule({
  id: 'repeater/pair-reversed',
  severity: 'warning',
  basis: 'band plan',
  looksFor:
    'A repeater whose output stands where the band plan has inputs, and whose input stands among the outputs.',
  why: 'What a repeater receives is what its users transmit, and lists of pairs do not agree which they print first. Reversed, members listen on the input and call on the output.',
  mend: 'Exchange output and input: `output` is what members listen to.',
  sources: [{ document: 'ARRL band plan', section: 'repeater inputs and outputs by band' }],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.340, offset: 0.6, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const pair = reversedPair(law, repeater);
      if (!pair) continue;
      const { outputHz, inputHz, service } = repeater;
      const [usual] = usualOffset(law, inputHz, service)?.usualHz ?? [];
      const offsetHz = usual ?? outputHz - inputHz;
      yield {
        at: ['repeaters', repeater.id, 'output'],
        message: `Output ${formatFrequency(outputHz)} MHz lies among the ${pair.output.label} and input ${formatFrequency(inputHz)} MHz among the ${pair.input.label}; the other way round it would be output ${formatFrequency(inputHz)} MHz, offset ${formatOffset(offsetHz)}.`,
        suggestion: formatFrequency(inputHz),
        source: sourceOf(law, pair.output),
      };
    }
  },
});
