/** Every licence of every member for a service that the country has. */

import type { PlanPath } from '../findings/finding.ts';
import type { Licence, Member, Plan } from '../plan/model.ts';
import type { ServiceRow } from '../regulations/country.ts';
import { type Law, serviceById } from '../regulations/law.ts';

export interface LicenceHeld {
  readonly member: Member;
  readonly service: ServiceRow;
  readonly licence: Licence;
  readonly at: PlanPath;
}

export function* licencesOf(plan: Plan, law: Law): Generator<LicenceHeld> {
  for (const member of plan.members.values()) {
    for (const [id, licence] of member.licences) {
      const service = serviceById(law, id);
      if (service) yield { member, service, licence, at: ['members', member.id, 'licences', id] };
    }
  }
}
