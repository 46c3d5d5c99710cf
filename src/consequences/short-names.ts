/**
 * What members are called where there is no room for a whole name: their first name, and where two have the same
 * one, as much of what follows it as parts them: `Anna K.` and `Anna Lindq.`. Whom a card sends its bearer to
 * must be one person.
 */
import type { Member, Plan } from '../plan/model.ts';

const known = new WeakMap<Plan, ReadonlyMap<string, string>>();

/** The short name of a member; the id itself where it leads to nobody. */
export function shortName(plan: Plan, member: string): string {
  const names = known.get(plan) ?? shortNames([...plan.members.values()]);
  known.set(plan, names);
  return names.get(member) ?? member;
}

/** By id. No two are alike: members of one whole name have their ids behind it. */
export function shortNames(members: readonly Pick<Member, 'id' | 'name'>[]): ReadonlyMap<string, string> {
  const namesakes = new Map<string, { readonly id: string; readonly rest: readonly string[] }[]>();
  for (const { id, name } of members) {
    const [first = '', ...rest] = name.normalize('NFC').trim().split(/\s+/);
    const same = namesakes.get(first) ?? [];
    same.push({ id, rest: [...rest.join(' ')] });
    namesakes.set(first, same);
  }
  const short = new Map<string, string>();
  for (const [first, same] of namesakes)
    for (const one of same) {
      const others = same.filter((each) => each !== one).map(({ rest }) => rest);
      short.set(one.id, others.length === 0 ? first : parted(first, one, others));
    }
  return short;
}

function parted(
  first: string,
  { id, rest }: { readonly id: string; readonly rest: readonly string[] },
  others: readonly (readonly string[])[],
): string {
  const whole = [first, rest.join('')].filter(Boolean).join(' ');
  if (others.some((other) => other.join('') === rest.join(''))) return `${whole} (${id})`;
  for (let length = 1; length < rest.length; length += 1) {
    // A point in the place of the last letter saves nothing, and one behind a blank would be read as a name's end.
    if (length >= rest.length - 1 || rest[length - 1] === ' ') continue;
    const start = rest.slice(0, length).join('');
    if (others.every((other) => other.slice(0, length).join('') !== start)) return `${first} ${start}.`;
  }
  return whole;
}
