import type { Plan, Who } from '../plan/model.ts';

/** Members meant by `all`, by teams and by members, each once, in the order of the roster. Ids that lead nowhere are left out. */
export function membersOf(plan: Plan, who: Who): readonly string[] {
  if (who === 'all') return [...plan.members.keys()];
  const places = placesInRoster(plan);
  const meant = new Set(who.flatMap((id) => plan.teams.get(id) ?? [id]).filter((id) => places.has(id)));
  return [...meant].toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
}

const known = new WeakMap<Plan, ReadonlyMap<string, number>>();

function placesInRoster(plan: Plan): ReadonlyMap<string, number> {
  const found = known.get(plan) ?? new Map([...plan.members.keys()].map((id, k) => [id, k]));
  known.set(plan, found);
  return found;
}
