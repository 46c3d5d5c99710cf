import { radioFit } from '../../consequences/radio-fit.ts';
import { formatPower } from '../../radio/format-quantity.ts';
import { overLimit } from '../over-limit.ts';
import { commonPractice, rule } from '../rule.ts';

/** A power no radio has was meant for another channel, or written in the wrong unit. */
export const powerOverRadios = rule({
  id: 'power/over-radios',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A channel whose power in watts is more than any radio that can use it has.',
  why: 'Nobody can set it, and what depends on it, such as a predicted path, would promise more than there is.',
  mend: 'Write a power that the radios have, or name the setting.',
  sources: [commonPractice],
  bad: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, power: 50 W } # finding`,
  good: `
channels:
  1: { name: GAP, repeater: gap }
  3: { name: SIMP, simplex: 146.550, width: 25, power: 5 W }`,
  *check(context) {
    const { plan, consequences } = context;
    for (const { slot, power } of plan.channels.values()) {
      const on = consequences.channels.get(slot);
      if (typeof power !== 'number' || !on) continue;
      const able = [...plan.radios.values()].filter(
        (radio) =>
          radio.powersW.size > 0 &&
          radioFit(radio, on).transmits &&
          on.services.some((id) => radio.certified.includes(id)),
      );
      const most = Math.max(...able.flatMap(({ powersW }) => [...powersW.values()]));
      if (able.length === 0 || power <= most || overLimit(context, slot, power, () => true)) continue;
      const strongest = able.find(({ powersW }) => [...powersW.values()].includes(most));
      yield {
        at: ['channels', slot, 'power'],
        message: `Power is ${formatPower(power)}; the strongest radio for this channel, ${strongest?.name}, has ${formatPower(most)}.`,
        suggestion: formatPower(most),
      };
    }
  },
});
