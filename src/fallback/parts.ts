/** The parts a graph falls into when some of its things are gone: who can still get through to whom. */
import type { Graph } from './graph.ts';

/** Each part in the order of the graph, the parts by their first thing. */
export function partsOf(graph: Graph, gone: ReadonlySet<string> = new Set()): readonly (readonly string[])[] {
  const partOf = new Map<string, number>();
  let count = 0;
  for (const start of graph.keys()) {
    if (gone.has(start) || partOf.has(start)) continue;
    const waiting = [start];
    for (let thing = waiting.pop(); thing !== undefined; thing = waiting.pop()) {
      if (gone.has(thing) || partOf.has(thing)) continue;
      partOf.set(thing, count);
      waiting.push(...(graph.get(thing) ?? []));
    }
    count += 1;
  }
  const parts: string[][] = Array.from({ length: count }, () => []);
  for (const thing of graph.keys()) parts[partOf.get(thing) ?? -1]?.push(thing);
  return parts;
}
