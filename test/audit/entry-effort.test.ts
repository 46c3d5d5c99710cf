import { describe, expect, test } from 'vitest';
import { entryEffort } from '../../src/audit/entry-effort.ts';
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
});
