/** Things and what joins them, without direction: each thing with its neighbours. */
export type Graph = ReadonlyMap<string, ReadonlySet<string>>;

/** @param alone things that are there even if nothing joins them */
export function graphOf(joins: Iterable<readonly [string, string]>, alone: Iterable<string> = []): Graph {
  const graph = new Map<string, Set<string>>();
  const neighbours = (thing: string): Set<string> => {
    const known = graph.get(thing) ?? new Set<string>();
    graph.set(thing, known);
    return known;
  };
  for (const thing of alone) neighbours(thing);
  for (const [one, other] of joins) {
    const [ofOne, ofOther] = [neighbours(one), neighbours(other)];
    if (one === other) continue;
    ofOne.add(other);
    ofOther.add(one);
  }
  return graph;
}
