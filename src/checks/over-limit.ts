/** Whether the power on a channel is over a limit, for a radio and a member who may use it: as written, or else as set. */

import { memberKinds } from '../consequences/member-kinds.ts';
import { isOver, powerWords } from '../consequences/power-words.ts';
import { radiatedW } from '../consequences/use.ts';
import type { Observation } from '../findings/finding.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import type { PowerRow } from '../regulations/country.ts';
import { sourceOf } from '../regulations/law.ts';
import { allowing } from './allowing.ts';
import type { RuleContext } from './rule.ts';

export function overLimit(
  { plan, law, consequences }: RuleContext,
  slot: number,
  written: string | number | undefined,
  concerns: (limit: PowerRow) => boolean,
): Omit<Observation, 'at'> | undefined {
  const on = consequences.channels.get(slot);
  for (const [{ id, radios }] of memberKinds({ plan, law })) {
    for (const radio of radios.flatMap((name) => plan.radios.get(name) ?? [])) {
      const use = consequences.use(id, radio.id, slot);
      const askedW =
        typeof written === 'string' ? radio.powersW.get(written) : (written ?? use?.setting?.powerW);
      if (askedW === undefined || use?.may !== 'transmit' || !on) continue;
      const frequencyHz = on.transmitHz ?? on.receiveHz;
      const limit = use.limits.find(
        (row) =>
          concerns(row) && isOver(radiatedW(askedW, radio.antenna, row.measure, frequencyHz), row.maxW),
      );
      if (!limit) continue;
      const sent = powerWords(radiatedW(askedW, radio.antenna, limit.measure, frequencyHz), limit.measure);
      const how = limit.measure === 'output' ? '' : `, ${sent} with the antenna of ${radio.name}`;
      const setting = typeof written === 'string' ? `${written} ` : '';
      return {
        message: `Power ${setting}is ${powerWords(askedW, 'output')}${how}; ${allowing(law, limit)} ${powerWords(limit.maxW, limit.measure)} at ${formatFrequency(frequencyHz)} MHz.`,
        ...(typeof written === 'number' &&
          limit.measure === 'output' && { suggestion: powerWords(limit.maxW, 'output') }),
        source: sourceOf(law, limit),
      };
    }
  }
  return undefined;
}
