/** Members alike in all that decides where they may transmit: radios, licences, usual place. Hundreds of members are few kinds. */
import type { Member, Plan } from '../plan/model.ts';

const known = new WeakMap<Plan, readonly MemberKind[]>();

/** Never empty. */
export type MemberKind = readonly [Member, ...Member[]];

export function memberKinds(plan: Plan): readonly MemberKind[] {
  const found = known.get(plan);
  if (found) return found;
  const kinds = new Map<string, [Member, ...Member[]]>();
  for (const member of plan.members.values()) {
    const licences = [...member.licences].map(
      ([service, { class: held, expires, authority }]) =>
        `${service} ${held ?? ''} ${expires !== undefined && expires < plan.effective} ${authority !== undefined}`,
    );
    const key = JSON.stringify([member.radios, licences, member.at ?? null]);
    const kind = kinds.get(key);
    if (kind) kind.push(member);
    else kinds.set(key, [member]);
  }
  const all = [...kinds.values()];
  known.set(plan, all);
  return all;
}
