/** Repeaters, digipeaters and mailboxes whose power, with their antenna, is over a limit where they stand. */
import { plannedSignals } from '../consequences/planned-signals.ts';
import { isOver, powerWords } from '../consequences/power-words.ts';
import { radiatedW } from '../consequences/use.ts';
import type { Observation } from '../findings/finding.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import type { PowerRow } from '../regulations/country.ts';
import { serviceById, sourceOf } from '../regulations/law.ts';
import { powerLimits } from '../regulations/power-limit.ts';
import { allowing } from './allowing.ts';
import type { RuleContext } from './rule.ts';

export function* stationsOverLimit(
  context: RuleContext,
  concerns: (limit: PowerRow) => boolean,
): Generator<Observation> {
  const { plan, law } = context;
  for (const signal of plannedSignals(context)) {
    if (!signal.answer.may || signal.part === 'input' || signal.part === 'channel') continue;
    const station = signal.part === 'packet station' ? signal.station : signal.repeater;
    const { powerW, antenna, place: placeId, id } = station;
    const service = serviceById(law, signal.services[0] ?? '');
    if (powerW === undefined || !service) continue;
    const place = placeId === undefined ? undefined : plan.places.get(placeId);
    const { on, frequencyHz } = signal;
    // Whose licence a station runs under is not in the plan: the highest class is taken.
    const highest = service.classes.at(-1)?.id;
    const limit = powerLimits(law, {
      service: service.id,
      frequencyHz,
      station: signal.part === 'packet station' ? 'digipeater' : 'repeater',
      kind: on.kind,
      ...(on.modulation && { modulation: on.modulation }),
      ...(highest !== undefined && { licenceClass: highest }),
      ...(place && { at: [place.at.latitudeDeg, place.at.longitudeDeg] as const }),
    }).find((row) => concerns(row) && isOver(radiatedW(powerW, antenna, row.measure, frequencyHz), row.maxW));
    if (!limit) continue;
    const section =
      signal.part === 'packet station'
        ? ['packet', signal.digipeater ? 'digipeaters' : 'mailboxes']
        : ['repeaters'];
    const sent = powerWords(radiatedW(powerW, antenna, limit.measure, frequencyHz), limit.measure);
    const how = limit.measure === 'output' ? '' : `, ${sent} with its antenna`;
    const where = limit.note === undefined ? '' : ` (${limit.note})`;
    yield {
      at: [...section, id, 'power'],
      message: `Power of ${station.name} is ${powerWords(powerW, 'output')}${how}; ${allowing(law, limit)} ${powerWords(limit.maxW, limit.measure)} at ${formatFrequency(frequencyHz)} MHz${where}.`,
      ...(limit.measure === 'output' && { suggestion: powerWords(limit.maxW, 'output') }),
      source: sourceOf(law, limit),
    };
  }
}
