import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Graph, graphOf } from '../../src/fallback/graph.ts';
import { partsOf } from '../../src/fallback/parts.ts';
import { weakSpots } from '../../src/fallback/weak-spots.ts';

const graphs = fc
  .tuple(fc.integer({ min: 1, max: 9 }), fc.array(fc.tuple(fc.nat(8), fc.nat(8)), { maxLength: 16 }))
  .map(([size, joins]) =>
    graphOf(
      joins.map(([a, b]) => [String(a % size), String(b % size)] as const),
      Array.from({ length: size }, (_, index) => String(index)),
    ),
  );

const without = (graph: Graph, one: string, other: string): Graph =>
  new Map(
    [...graph].map(([thing, near]) => [
      thing,
      new Set(
        [...near].filter((to) => !((thing === one && to === other) || (thing === other && to === one))),
      ),
    ]),
  );

// Oracle: take each thing and each join out and count what is left in how many parts.
test('the weak spots are the things and joins whose loss leaves more parts than before', () => {
  fc.assert(
    fc.property(graphs, (graph) => {
      const parts = partsOf(graph).length;
      // A thing alone takes its own part away with it.
      const things = [...graph.keys()].filter((thing) => partsOf(graph, new Set([thing])).length > parts);
      const joins = [...graph].flatMap(([one, near]) =>
        [...near]
          .filter((other) => one < other && partsOf(without(graph, one, other)).length > parts)
          .map((other) => `${one} ${other}`),
      );
      const found = weakSpots(graph);
      expect([...found.things].toSorted()).toEqual(things.toSorted());
      expect(found.joins.map((join) => [...join].toSorted().join(' ')).toSorted()).toEqual(joins.toSorted());
    }),
    { numRuns: 2000, seed: 3 },
  );
});

test('in a chain of relays every relay but the ends is a weak spot, and so is every hop', () => {
  const chain = graphOf(
    Array.from({ length: 20_000 }, (_, index) => [`r${index}`, `r${index + 1}`] as const),
  );
  const { things, joins } = weakSpots(chain);
  expect(things.size).toBe(19_999);
  expect(joins).toHaveLength(20_000);
});

test('a ring of relays has no weak spot', () => {
  const ring = graphOf(['ab', 'bc', 'cd', 'da'].map((join) => [join.charAt(0), join.charAt(1)] as const));
  expect(weakSpots(ring)).toEqual({ things: new Set(), joins: [] });
});
