import { isBarredSegment } from '../../consequences/barred-segment.ts';
import { plannedSignals } from '../../consequences/planned-signals.ts';
import { formatFrequency } from '../../radio/format-quantity.ts';
import { serviceById, sourceOf } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** The short-range services live from everybody hearing only their neighbours; a repeater would fill a county. */
export const serviceRepeaterNotAllowed = rule({
  id: 'service/repeater-not-allowed',
  severity: 'error',
  basis: 'law',
  looksFor: 'A repeater in a service that has none, or on a channel of a service that is not for repeaters.',
  why: 'FRS, MURS, CB and the like are open to everybody because their range is short. Their rules bar repeaters; GMRS has them on eight pairs only.',
  mend: 'Use the service without a repeater, or one of the pairs that are for repeaters.',
  sources: [{ document: '47 CFR part 95', section: '95.1763 and 95.2733' }],
  bad: `
repeaters:
  gap: { name: Valley relay, output: 151.820, input: 154.570, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Valley relay, call: WZZZ401, output: 462.675, offset: 5, tone: 141.3 }`,
  *check(context) {
    const { law } = context;
    for (const signal of plannedSignals(context)) {
      if (signal.part !== 'output') continue;
      const { answer, services, at, frequencyHz, repeater } = signal;
      if (answer.may || answer.why !== 'station' || isBarredSegment(law, signal)) continue;
      const service = serviceById(law, services[0] ?? '');
      if (!service) continue;
      const reversed = law.country.channels.find(
        (row) => row.service === service.id && row.repeaterInputHz === frequencyHz,
      );
      const what = !service.repeaters
        ? `The ${service.name} has no repeaters`
        : `${formatFrequency(frequencyHz)} MHz is no output of a repeater in the ${service.name}`;
      yield {
        at,
        message: reversed
          ? `${what}: it is what members send to one, whose output is ${formatFrequency(reversed.receiveHz)} MHz.`
          : `${what}; ${repeater.name} would be one on ${formatFrequency(frequencyHz)} MHz.`,
        ...(reversed && { suggestion: formatFrequency(reversed.receiveHz) }),
        source: sourceOf(law, answer.row ?? service),
      };
    }
  },
});
