import { inputPath } from '../../consequences/planned-signals.ts';
import { formatFrequency, formatOffset } from '../../radio/format-quantity.ts';
import { usualOffset } from '../../regulations/usual-offset.ts';
import { commonPractice, rule } from '../rule.ts';

/** A repeater cannot listen where it sends: an offset of nothing is a figure nobody filled in. */
export const offsetZero = rule({
  id: 'offset/zero',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'A repeater whose input is its output.',
  why: 'A repeater sends while it receives, so the two must stand apart; with one frequency it would hear itself. Members would call on its output and not be heard.',
  mend: 'Write the offset. What repeats on one frequency is no repeater to a radio: enter it as a simplex channel.',
  sources: [commonPractice],
  bad: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: 0, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const { outputHz, inputHz, writtenAs, service } = repeater;
      if (inputHz !== outputHz) continue;
      const usual = usualOffset(law, outputHz, service)?.usualHz ?? [];
      const [first] = usual;
      const given =
        usual.length === 0 ? '' : `; the usual offset here is ${usual.map(formatOffset).join(' or ')}`;
      yield {
        at: inputPath(repeater),
        message: `Input and output are both ${formatFrequency(outputHz)} MHz${given}.`,
        ...(first !== undefined && {
          suggestion: writtenAs === 'offset' ? formatOffset(first) : formatFrequency(outputHz + first),
        }),
      };
    }
  },
});
