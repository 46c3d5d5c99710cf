import { expect, test } from 'vitest';
import type { CauseCode } from '../../src/audit/cause.ts';
import type { Audit } from '../../src/audit/compare-entries.ts';
import { type Entry, entriesOf } from '../../src/consequences/entries.ts';
import type { Radio } from '../../src/plan/model.ts';
import { faultPlan, lastFaultPlan } from './fault-plan.ts';
import { type Bench, makers } from './faults.ts';
import { Seeded } from './seeded.ts';
import { auditOf, planFrom, type Row, radioOf, tableOf, worksheetRows } from './worksheet-rows.ts';

const now = await planFrom(faultPlan);
const last = await planFrom(lastFaultPlan);
const kinds = Object.keys(makers) as CauseCode[];
const benches = ['handheld', 'mobile', 'plain'].map((id) => {
  const radio = radioOf(now, id);
  return {
    radio,
    entries: entriesOf(now.plan, now.consequences, radio),
    lastEntries: entriesOf(last.plan, last.consequences, radioOf(last, id)),
    rows: worksheetRows(now, radio),
    lastRows: worksheetRows(last, radioOf(last, id)),
  };
});

/** One spelling for a value: what the faults write is shorter than what the worksheet says. */
const spelled = (cell: string) =>
  cell
    .replace('wide', '25 kHz')
    .replace('narrow', '12.5 kHz')
    .replace(/^(high|low) .*/, '$1')
    .replace(/^off$/, 'none')
    .replace(/^(\d+)$/, '$1.0');

/** Cells that are not as they were, and that matter: the size of an offset that is off on both does not. */
function changedCells(before: readonly Row[], after: readonly Row[]): Map<number, Set<string>> {
  const changed = new Map<number, Set<string>>();
  for (const row of after) {
    const slot = Number(row.get('slot'));
    const was = before.find((each) => each.get('slot') === row.get('slot'));
    const fields = [...row].flatMap(([column, value]) => {
      if (was === undefined || [...row.values()].includes('empty')) return ['slot'];
      const idle =
        column === 'offset' &&
        was.get('offset direction') === 'none' &&
        row.get('offset direction') === 'none';
      // Nobody transmits there, so any power will do.
      const free = column === 'power' && was.get('power')?.startsWith('any');
      return idle || free || spelled(value) === spelled(was.get(column) ?? 'none')
        ? []
        : [column.replaceAll(' ', '-')];
    });
    if (fields.length > 0) changed.set(slot, new Set(fields));
  }
  return changed;
}

interface Trial {
  readonly kinds: readonly CauseCode[];
  readonly slots: readonly (readonly number[])[];
  readonly audit: Audit;
  readonly cells: Map<number, Set<string>>;
  /** For each fault, other causes that would have left what it left. */
  readonly twins: readonly (readonly CauseCode[])[];
}

/** Puts in as many faults as asked for, none over another, and audits; undefined where this draw makes no sense. */
function trial(chance: Seeded, wanted: readonly (CauseCode | undefined)[]): Trial | undefined {
  const bench:
    | { radio: Radio; entries: readonly Entry[]; lastEntries: readonly Entry[]; rows: Row[]; lastRows: Row[] }
    | undefined = chance.pick(benches);
  if (bench === undefined) return undefined;
  const rows = bench.rows.map((row) => new Map(row));
  const working: Bench = { rows, entries: bench.entries, lastRows: bench.lastRows };
  const done: CauseCode[] = [];
  const slots: (readonly number[])[] = [];
  for (const kind of wanted) {
    if (kind === undefined) return undefined;
    const touched = makers[kind]?.(working, chance);
    if (touched === undefined || touched.some((slot) => slots.flat().includes(slot))) return undefined;
    done.push(kind);
    slots.push(touched);
  }
  const cells = changedCells(bench.rows, rows);
  // A run over channels that were made alike may leave some of them as they were.
  if (slots.flat().some((slot) => !cells.has(slot))) return undefined;
  const twins = slots.map((touched) => twinsOf(touched, bench.rows, bench.lastRows, rows));
  return {
    kinds: done,
    slots,
    cells,
    twins,
    audit: auditOf(now, bench.radio, tableOf(rows), bench.lastEntries),
  };
}

/** Judged from the rows alone, without the program. */
function twinsOf(
  slots: readonly number[],
  before: readonly Row[],
  lastRows: readonly Row[],
  after: readonly Row[],
): CauseCode[] {
  const twins: CauseCode[] = [];
  for (const slot of slots) {
    const at = before.findIndex((row) => row.get('slot') === String(slot));
    const row = after.find((each) => each.get('slot') === String(slot));
    const [was, previous] = [before[at], before[at - 1]];
    const old = lastRows.find((each) => each.get('slot') === String(slot));
    for (const [column, value] of row ?? []) {
      if (value === was?.get(column) || column === 'slot') continue;
      const same = (cell: string | undefined) => cell !== undefined && spelled(cell) === spelled(value);
      if (same(previous?.get(column))) twins.push('left-from-before');
      if (same(old?.get(column))) twins.push('last-revision');
    }
  }
  return twins;
}

const causesOf = (result: Trial, at: number): readonly (CauseCode | undefined)[] =>
  result.audit.differences
    .filter(({ slot }) => result.slots[at]?.includes(slot))
    .map(({ cause }) => cause?.code);

/** The cause that was put in is the one named. */
function named(result: Trial, at: number): boolean {
  return causesOf(result, at).includes(result.kinds[at]);
}

/** Or one that leaves the very same figures: what the slot before or the last revision has. */
function namedOrSame(result: Trial, at: number): boolean {
  return named(result, at) || (result.twins[at] ?? []).some((twin) => causesOf(result, at).includes(twin));
}

test.each(kinds)('a fault of the kind %s is found in its slot and field, and its cause is named', (kind) => {
  const chance = new Seeded(20261125);
  let [made, right] = [0, 0];
  for (let i = 0; i < 400 && made < 60; i += 1) {
    const result = trial(chance, [kind]);
    if (result === undefined) continue;
    made += 1;
    expectFound(result);
    if (namedOrSame(result, 0)) right += 1;
  }
  expect(made).toBeGreaterThan(20);
  expect(right / made).toBeGreaterThanOrEqual(0.8);
});

function expectFound({ audit, cells, kinds: made, slots }: Trial): void {
  const found = new Map<number, Set<string>>();
  for (const { slot, field } of audit.differences) found.set(slot, (found.get(slot) ?? new Set()).add(field));
  expect(found, `${made.join(' and ')} in slots ${slots.join(' and ')}`).toEqual(cells);
}

test('ten thousand seeded faults, single and double, are all found where they are and nowhere else; nearly every cause is named', () => {
  const chance = new Seeded(1);
  const counts = { single: { all: 0, exact: 0, same: 0 }, double: { all: 0, exact: 0, same: 0 } };
  for (let made = 0; made < 10_000; ) {
    const wanted = made % 2 === 0 ? [chance.pick(kinds)] : [chance.pick(kinds), chance.pick(kinds)];
    const result = trial(chance, wanted);
    if (result === undefined) continue;
    made += 1;
    expectFound(result);
    const count = result.kinds.length === 1 ? counts.single : counts.double;
    result.kinds.forEach((_kind, at) => {
      count.all += 1;
      if (named(result, at)) count.exact += 1;
      if (namedOrSame(result, at)) count.same += 1;
    });
  }
  for (const { all, exact, same } of [counts.single, counts.double]) {
    // Measured: 96.8 % and 96.3 % named as put in; 99.8 % and 99.4 % with causes that leave the same figures.
    expect(exact / all).toBeGreaterThanOrEqual(0.955);
    expect(same / all).toBeGreaterThanOrEqual(0.99);
  }
});
