import type { Observation, PlanPath } from '../../findings/finding.ts';
import { nearest } from '../../findings/nearest.ts';
import type { Plan } from '../../plan/model.ts';
import { serviceById } from '../../regulations/law.ts';
import { commonPractice, rule } from '../rule.ts';

/** A service that the country does not have gives no licence, no channel and no certificate. */
export const serviceUnknownService = rule({
  id: 'service/unknown-service',
  severity: 'error',
  basis: 'consistency',
  looksFor: 'The name of a service that the rules of the country do not have.',
  why: 'Licences, certificates and channels are matched by the name of their service. Under a name that nobody has they count for nothing.',
  mend: 'Write the service as the message lists it.',
  sources: [commonPractice],
  bad: `
members:
  ada: { name: Ada Example, licences: { amatuer: { class: general, call: KX4XAA } }, radios: [handheld], at: base } # finding`,
  good: `
members:
  ada: { name: Ada Example, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }`,
  *check({ plan, law }) {
    const names = law.country.services.map(({ id }) => id);
    for (const { at, id, points } of servicesNamed(plan)) {
      if (serviceById(law, id)) continue;
      const near = nearest(id, names);
      const observation: Observation = {
        at,
        points,
        message: `There is no service \`${id}\` in these rules (${law.country.name}); there are ${names.join(', ')}.`,
      };
      yield near === undefined ? observation : { ...observation, suggestion: near };
    }
  },
});

interface ServiceNamed {
  readonly at: PlanPath;
  readonly id: string;
  readonly points: 'key' | 'value';
}

function* servicesNamed(plan: Plan): Generator<ServiceNamed> {
  for (const { id: radio, certified } of plan.radios.values())
    for (const [index, id] of certified.entries())
      yield { at: ['radios', radio, 'certified', index], id, points: 'value' };
  for (const member of plan.members.values())
    for (const id of member.licences.keys())
      yield { at: ['members', member.id, 'licences', id], id, points: 'key' };
  for (const { id: repeater, service } of plan.repeaters.values())
    if (service !== undefined) yield { at: ['repeaters', repeater, 'service'], id: service, points: 'value' };
  for (const { slot, service } of plan.channels.values())
    if (service !== undefined) yield { at: ['channels', slot, 'service'], id: service, points: 'value' };
}
