/**
 * Members alike in all that decides where they may transmit: radios, licences, and the places with rules of
 * their own that they stand in. Hundreds of members are a few kinds.
 */
import type { Member, Place, Plan } from '../plan/model.ts';
import { contains } from '../regulations/ground.ts';
import type { Law } from '../regulations/law.ts';

/** Never empty. */
export type MemberKind = readonly [Member, ...Member[]];

const known = new WeakMap<Plan, readonly MemberKind[]>();

export function memberKinds({
  plan,
  law,
}: {
  readonly plan: Plan;
  readonly law: Law;
}): readonly MemberKind[] {
  const found = known.get(plan);
  if (found) return found;
  const areas = new Map([...plan.places].map(([id, place]) => [id, areasHolding(law, place)]));
  const kinds = new Map<string, [Member, ...Member[]]>();
  for (const member of plan.members.values()) {
    const licences = [...member.licences].map(
      ([service, { class: held, expires, authority }]) =>
        // The day on which a licence ended is in the words of what it no longer allows.
        `${service} ${held ?? ''} ${expires !== undefined && expires < plan.effective ? expires : ''} ${authority !== undefined}`,
    );
    const area = member.at === undefined ? undefined : areas.get(member.at);
    const key = JSON.stringify([member.radios, licences, area ?? '']);
    const kind = kinds.get(key);
    if (kind) kind.push(member);
    else kinds.set(key, [member]);
  }
  const all = [...kinds.values()];
  known.set(plan, all);
  return all;
}

/** The outlines of the country's area rows that a place lies in, by their numbers. */
function areasHolding(law: Law, { at }: Place): string {
  return law.country.areas
    .flatMap(({ polygon }, index) => (contains(polygon, [at.latitudeDeg, at.longitudeDeg]) ? [index] : []))
    .join(' ');
}
