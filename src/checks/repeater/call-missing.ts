import { repeaterServices } from '../../consequences/planned-signals.ts';
import { identificationSource, serviceById } from '../../regulations/law.ts';
import { rule } from '../rule.ts';

/** The call sign a repeater sends is how a member knows that it is this one they have opened. */
export const repeaterCallMissing = rule({
  id: 'repeater/call-missing',
  severity: 'note',
  basis: 'practice',
  looksFor: 'A repeater without its call sign.',
  why: 'A repeater identifies itself. On a hill, several may share a pair, and the call sign is what tells the near one from a far one.',
  mend: "Add `call`; its keeper, or the coordinator's list, has it.",
  sources: [{ document: '47 CFR', section: '97.119 and 95.1751' }],
  bad: `
repeaters:
  gap: { name: Gap repeater, output: 146.940, offset: -0.6, tone: 100.0 } # finding`,
  good: `
repeaters:
  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0 }`,
  *check({ plan, law }) {
    for (const repeater of plan.repeaters.values()) {
      const service = serviceById(law, repeaterServices(law, repeater)[0] ?? '');
      if (repeater.call !== undefined || !service?.callSigns || !service.repeaters) continue;
      yield {
        at: ['repeaters', repeater.id],
        points: 'key',
        message: `${repeater.name} has no call sign; repeaters of the ${service.name} identify by one.`,
        source: identificationSource(law, service),
      };
    }
  },
});
