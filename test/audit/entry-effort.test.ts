import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { entryEffort } from '../../src/audit/entry-effort.ts';
import { shortestOrder } from '../../src/audit/shortest-order.ts';
import { type Entry, entriesOf } from '../../src/consequences/entries.ts';
import { faultPlan } from './fault-plan.ts';
import { planFrom, radioOf } from './worksheet-rows.ts';

const tested = await planFrom(faultPlan);
const handheld = radioOf(tested, 'handheld');
const entries = entriesOf(tested.plan, tested.consequences, handheld);
const only = (...slots: number[]): Entry[] => entries.filter(({ slot }) => slots.includes(slot));

describe('keys to enter a channel by hand', () => {
  // Counted by hand at the model's own rules.
  test('a simplex channel into a radio that was reset: slot, frequency, name', () => {
    // Slot 3: 1 + 2; receive 146.550: 6 + 1; name SIMP 1: menu 2, S 4+1, I 3+1, M 1+1, P 1+1, space 1+1, 1 1+1, confirm 1.
    expect(entryEffort(handheld, only(3)).keys).toBe(3 + 7 + 2 + 5 + 4 + 2 + 2 + 2 + 2 + 1);
    expect(entryEffort(handheld, only(3)).fieldsSet).toBe(2);
  });

  test('what stays the same as on the channel before costs nothing', () => {
    const [first, second] = only(1, 2);
    if (first === undefined || second === undefined) throw new Error('no such slots');
    const twin = { ...first, slot: 2 };
    expect(entryEffort(handheld, [first, twin]).keys - entryEffort(handheld, [first]).keys).toBe(3);
    expect(entryEffort(handheld, [first, twin]).fieldsKept).toBeGreaterThan(
      entryEffort(handheld, [first]).fieldsKept,
    );
  });

  test('time is half a second a key, and a little over a second to find each value', () => {
    const { keys, fieldsSet, durationS } = entryEffort(handheld, entries);
    expect(durationS).toBeCloseTo(keys * 0.5 + (fieldsSet + entries.length) * 1.35, 9);
  });

  test('the best order holds every slot once and never takes more keys than the sheet', () => {
    const { best, keys } = entryEffort(handheld, entries);
    expect(best.slots.toSorted((a, b) => a - b)).toEqual(entries.map(({ slot }) => slot));
    expect(best.keys).toBeLessThanOrEqual(keys);
  });
});

describe('the cheapest order', () => {
  const table = (count: number) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: count, maxLength: count }), {
      minLength: count + 1,
      maxLength: count + 1,
    });

  test('is the one that trying every order finds', () => {
    fc.assert(
      fc.property(table(5), (costs) => {
        const cost = (from: number | undefined, to: number) =>
          costs[from === undefined ? 5 : from]?.[to] ?? 0;
        const totals = permutations([0, 1, 2, 3, 4]).map((order) =>
          order.reduce((sum, to, at) => sum + cost(order[at - 1], to), 0),
        );
        expect(shortestOrder(5, cost).cost).toBe(Math.min(...totals));
      }),
      { numRuns: 60 },
    );
  });

  test('of many things holds each once, costs what it says, and no more than the order given', () => {
    fc.assert(
      fc.property(table(16), (costs) => {
        const cost = (from: number | undefined, to: number) =>
          costs[from === undefined ? 16 : from]?.[to] ?? 0;
        const total = (order: readonly number[]) =>
          order.reduce((sum, to, at) => sum + cost(order[at - 1], to), 0);
        const found = shortestOrder(16, cost);
        const given = Array.from({ length: 16 }, (_, at) => at);
        expect(found.order.toSorted((a, b) => a - b)).toEqual(given);
        expect(found.cost).toBe(total(found.order));
        expect(found.cost).toBeLessThanOrEqual(total(given));
      }),
      { numRuns: 60 },
    );
  });
});

function permutations(items: readonly number[]): number[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item) =>
    permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}
