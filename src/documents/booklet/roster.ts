/** The members: calls, radios, where they are, and a contact only where it is shared. */
import type { Member, Plan } from '../../plan/model.ts';
import type { Law } from '../../regulations/law.ts';
import { callSigns } from '../cards.ts';
import type { Words } from '../words.ts';

export interface RosterRow {
  readonly name: string;
  readonly calls: string;
  readonly classes: string;
  readonly radios: string;
  readonly places: string;
  /** Empty unless the member shares it. */
  readonly contact: string;
}

export function roster(plan: Plan, law: Law, words: Words): readonly RosterRow[] {
  return [...plan.members.values()].map((member) => ({
    name: member.name,
    calls: callSigns(member, law).join(', '),
    classes: [...member.licences]
      .map(([service, licence]) =>
        [
          words.service(service),
          licence.class === undefined ? '' : words.licenceClass(service, licence.class),
        ]
          .filter(Boolean)
          .join(' '),
      )
      .join(', '),
    radios: member.radios.map((id) => plan.radios.get(id)?.name ?? id).join(', '),
    places: placesOf(plan, member).join(', '),
    contact: member.contactShared
      ? [...member.contact].map(([kind, value]) => `${kind} ${value}`).join(', ')
      : '',
  }));
}

function placesOf(plan: Plan, member: Member): string[] {
  return [member.at, ...member.roams].flatMap((id) =>
    id === undefined ? [] : [plan.places.get(id)?.name ?? id],
  );
}
