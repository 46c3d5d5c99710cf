import { plannedSignals } from '../../consequences/planned-signals.ts';
import { radiatedW } from '../../consequences/use.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { powerLimits } from '../../regulations/power-limit.ts';
import { isOver, powerWords } from '../power-words.ts';
import { rule } from '../rule.ts';

/** A station on a hill with gain reaches further than its figures look, and near some ranges the limit is lower. */
export const powerStationOverLawful = rule({
  id: 'power/station-over-lawful',
  severity: 'error',
  basis: 'law',
  looksFor:
    'A repeater, digipeater or mailbox whose power, with its antenna, is more than the rules allow where it stands.',
  why: 'Limits hold for the transmitter or for what the antenna radiates, and near borders and military ranges lower ones hold.',
  mend: 'Lower the power, or correct the figures of the antenna.',
  sources: [{ document: '47 CFR', section: '95.1767 and 97.313' }],
  bad: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.675, offset: 5, tone: 141.3, place: hill, power: 100 W } # finding`,
  good: `
repeaters:
  gap: { name: Neighbours, call: WZZZ401, service: gmrs, output: 462.675, offset: 5, tone: 141.3, place: hill, power: 50 W }`,
  *check(context) {
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
      }).find(({ maxW, measure }) => isOver(radiatedW(powerW, antenna, measure, frequencyHz), maxW));
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
        message: `Power of ${station.name} is ${powerWords(powerW, 'output')}${how}; the rules allow ${powerWords(limit.maxW, limit.measure)} at ${formatFrequency(frequencyHz)} MHz${where}.`,
        ...(limit.measure === 'output' && { suggestion: powerWords(limit.maxW, 'output') }),
        source: sourceOf(law, limit),
      };
    }
  },
});
