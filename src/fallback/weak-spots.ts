/**
 * Weak spots of a graph: things whose loss splits what hung together (articulation points), and joins whose
 * loss does (bridges), all found in one walk.
 *
 * R. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1 (1972), 146-160:
 * `number` is the order in which a thing is met, `low` the lowest number its subtree leads back to.
 */
import type { Graph } from './graph.ts';

export interface WeakSpots {
  readonly things: ReadonlySet<string>;
  /** Each with the thing that was met first on the left. */
  readonly joins: readonly (readonly [string, string])[];
}

interface Step {
  readonly thing: string;
  readonly parent: string | undefined;
  readonly rest: Iterator<string>;
  low: number;
  children: number;
}

export function weakSpots(graph: Graph): WeakSpots {
  const number = new Map<string, number>();
  const things = new Set<string>();
  const joins: [string, string][] = [];
  // Walked with a stack of our own: a line of ten thousand must not exhaust the call stack.
  const trail: Step[] = [];
  const enter = (thing: string, parent: string | undefined): void => {
    number.set(thing, number.size);
    const rest = (graph.get(thing) ?? new Set<string>())[Symbol.iterator]();
    trail.push({ thing, parent, rest, low: number.size - 1, children: 0 });
  };
  for (const root of graph.keys()) {
    if (number.has(root)) continue;
    enter(root, undefined);
    for (let step = trail.at(-1); step !== undefined; step = trail.at(-1)) {
      const next = step.rest.next();
      if (next.done !== true) {
        const met = number.get(next.value);
        if (met === undefined) {
          step.children += 1;
          enter(next.value, step.thing);
        } else if (next.value !== step.parent) step.low = Math.min(step.low, met);
        continue;
      }
      trail.pop();
      const above = trail.at(-1);
      if (above === undefined) {
        if (step.children > 1) things.add(step.thing);
        continue;
      }
      above.low = Math.min(above.low, step.low);
      const aboveNumber = number.get(above.thing) ?? 0;
      if (step.low > aboveNumber) joins.push([above.thing, step.thing]);
      // The root is a weak spot by its children alone.
      if (step.low >= aboveNumber && above.parent !== undefined) things.add(above.thing);
    }
  }
  return { things, joins };
}
