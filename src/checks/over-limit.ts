/** Whether the power written for a channel is over the law, for a radio and a member who may use it. */

import { memberKinds } from '../consequences/member-kinds.ts';
import { radiatedW } from '../consequences/use.ts';
import type { Observation } from '../findings/finding.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import { sourceOf } from '../regulations/law.ts';
import { isOver, powerWords } from './power-words.ts';
import type { RuleContext } from './rule.ts';

export function overLimit(
  { plan, law, consequences }: RuleContext,
  slot: number,
  written: string | number,
): Omit<Observation, 'at'> | undefined {
  const on = consequences.channels.get(slot);
  for (const [{ id, radios }] of memberKinds({ plan, law })) {
    for (const radio of radios.flatMap((name) => plan.radios.get(name) ?? [])) {
      const askedW = typeof written === 'string' ? radio.powersW.get(written) : written;
      const use = askedW === undefined ? undefined : consequences.use(id, radio.id, slot);
      if (askedW === undefined || use?.may !== 'transmit' || !on) continue;
      const frequencyHz = on.transmitHz ?? on.receiveHz;
      const limit = use.limits.find(({ maxW, measure }) =>
        isOver(radiatedW(askedW, radio.antenna, measure, frequencyHz), maxW),
      );
      if (!limit) continue;
      const sent = powerWords(radiatedW(askedW, radio.antenna, limit.measure, frequencyHz), limit.measure);
      const how = limit.measure === 'output' ? '' : `, ${sent} with the antenna of ${radio.name}`;
      const setting = typeof written === 'string' ? `${written} ` : '';
      return {
        message: `Power ${setting}is ${powerWords(askedW, 'output')}${how}; the rules allow ${powerWords(limit.maxW, limit.measure)} at ${formatFrequency(frequencyHz)} MHz.`,
        ...(typeof written === 'number' &&
          limit.measure === 'output' && { suggestion: powerWords(limit.maxW, 'output') }),
        source: sourceOf(law, limit),
      };
    }
  }
  return undefined;
}
