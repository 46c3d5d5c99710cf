import type { Plan, Who } from '../plan/model.ts';

/** Members meant by `all`, by teams and by members, each once, in the order of the roster. Ids that lead nowhere are left out. */
export function membersOf(plan: Plan, who: Who): readonly string[] {
  if (who === 'all') return [...plan.members.keys()];
  const meant = new Set(who.flatMap((id) => plan.teams.get(id) ?? [id]));
  return [...plan.members.keys()].filter((id) => meant.has(id));
}
