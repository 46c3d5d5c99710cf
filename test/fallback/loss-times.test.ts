import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Dependence, lossTimes } from '../../src/fallback/loss-times.ts';

const things = fc.integer({ min: 1, max: 9 }).chain((size) =>
  fc.array(
    fc.record({
      dependsOn: fc.array(fc.nat(size - 1), { maxLength: 3 }),
      backupMin: fc.constantFrom(0, 30, 60, 720),
    }),
    { minLength: size, maxLength: size },
  ),
);

// Oracle: let each thing be lost at the first loss among what it depends on plus its backup, over and over until
// nothing moves (Bellman and Ford).
test('each thing is lost after the first loss among what it needs, and then its own backup', () => {
  fc.assert(
    fc.property(things, fc.array(fc.nat(8), { minLength: 1, maxLength: 2 }), (written, failing) => {
      const all: Dependence[] = written.map(({ dependsOn, backupMin }, id) => ({
        id: String(id),
        dependsOn: dependsOn.map(String),
        backupMin,
      }));
      const failed = failing.map((id) => String(id % all.length));
      const slow = new Map(all.map(({ id }) => [id, failed.includes(id) ? 0 : Infinity]));
      for (let round = 0; round < all.length; round += 1) {
        for (const { id, dependsOn, backupMin } of all) {
          const first = Math.min(...dependsOn.map((needed) => slow.get(needed) ?? Infinity)) + backupMin;
          slow.set(id, Math.min(slow.get(id) ?? Infinity, first));
        }
      }
      const found = lossTimes(all, failed);
      for (const { id } of all) expect(found.get(id) ?? Infinity).toBe(slow.get(id));
      const order = [...found.values()];
      expect(order).toEqual(order.toSorted((a, b) => a - b));
    }),
    { numRuns: 1000, seed: 4 },
  );
});

test('a repeater with twelve hours of battery outlives its feeder by twelve hours, and what hangs on the repeater too', () => {
  const all = [
    { id: 'feeder', dependsOn: [], backupMin: 0 },
    { id: 'gap', dependsOn: ['feeder', 'tower'], backupMin: 720 },
    { id: 'link', dependsOn: ['gap'], backupMin: 60 },
    { id: 'piney', dependsOn: [], backupMin: 2880 },
  ];
  expect([...lossTimes(all, ['feeder'])]).toEqual([
    ['feeder', 0],
    ['gap', 720],
    ['link', 780],
  ]);
  // A repeater that itself fails is silent at once, however good its battery.
  expect(lossTimes(all, ['piney']).get('piney')).toBe(0);
});

test('things that depend on each other in a circle are lost together and the walk ends', () => {
  const all = [
    { id: 'a', dependsOn: ['b'], backupMin: 10 },
    { id: 'b', dependsOn: ['a'], backupMin: 5 },
  ];
  expect([...lossTimes(all, ['a'])]).toEqual([
    ['a', 0],
    ['b', 5],
  ]);
});
