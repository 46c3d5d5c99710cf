import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circles, type Dependent, supportsOf } from '../../src/consequences/supports.ts';

function graph(edges: Readonly<Record<string, readonly string[]>>): Map<string, Dependent> {
  return new Map(
    Object.entries(edges).map(([id, dependsOn]) => [id, { id, name: id, path: ['assets', id], dependsOn }]),
  );
}

const ids = (found: ReturnType<typeof circles>) =>
  found.map((circle) => circle.map(({ id }) => id).join(' '));

test('a circle is told once, from its first in the plan', () => {
  expect(ids(circles(graph({ a: ['b'], b: ['c'], c: ['a'], d: ['a'] })))).toEqual(['a b c']);
});

test('two ways to one supply are no circle', () => {
  expect(ids(circles(graph({ a: ['b', 'c'], b: ['d'], c: ['d'], d: [] })))).toEqual([]);
});

test('a chain of twenty thousand is followed to its end', () => {
  const long = Object.fromEntries(
    Array.from({ length: 20_000 }, (_, i) => [`n${i}`, i < 19_999 ? [`n${i + 1}`] : []]),
  );
  expect(circles(graph(long))).toEqual([]);
  expect(supportsOf(graph(long), ['n0']).size).toBe(20_000);
});

test('there is a circle just when something other than itself comes back to it', () => {
  const names = ['a', 'b', 'c', 'd', 'e'];
  const needs = fc.record(
    Object.fromEntries(
      names.map((name) => [name, fc.uniqueArray(fc.constantFrom(...names), { maxLength: 2 })]),
    ),
  );
  fc.assert(
    fc.property(needs, (edges: Record<string, string[]>) => {
      const all = graph(edges);
      const comesBack = names.some((name) =>
        (edges[name] ?? []).some((next) => next !== name && supportsOf(all, [next]).has(name)),
      );
      expect(circles(all).length > 0).toBe(comesBack);
    }),
  );
});
