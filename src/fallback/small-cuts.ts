/**
 * Which one thing, or which two, must fail for every way to be gone. A way is the set of things that each
 * alone end it. A cut of two is listed only where neither of them is a cut by itself.
 *
 * The first of two must end the first way, since one of them has to, and the second what is left: only what
 * the ways themselves name is ever tried, never every pair of a plan.
 */
export interface SmallCuts {
  readonly singles: ReadonlySet<string>;
  /** The two of each pair in the order of their names. */
  readonly pairs: readonly (readonly [string, string])[];
}

export function smallCuts(ways: readonly ReadonlySet<string>[]): SmallCuts {
  const [first, ...others] = ways;
  if (first === undefined) return { singles: new Set(), pairs: [] };
  const singles = new Set([...first].filter((thing) => others.every((way) => way.has(thing))));
  const pairs = new Map<string, readonly [string, string]>();
  for (const thing of first) {
    if (singles.has(thing)) continue;
    const [next, ...rest] = others.filter((way) => !way.has(thing));
    for (const partner of next ?? []) {
      if (singles.has(partner) || !rest.every((way) => way.has(partner))) continue;
      const pair = thing < partner ? ([thing, partner] as const) : ([partner, thing] as const);
      pairs.set(pair.join(' '), pair);
    }
  }
  return { singles, pairs: [...pairs.values()] };
}
