/** A radio filled in exactly as its worksheet says: the rows a person would type, from the sheet itself. */
import { readFileSync } from 'node:fs';
import type { Audit } from '../../src/audit/compare-entries.ts';
import { compareEntries } from '../../src/audit/compare-entries.ts';
import { readEntries } from '../../src/audit/read-entries.ts';
import { type Consequences, consequencesOf } from '../../src/consequences/consequences.ts';
import { type Entry, entriesOf } from '../../src/consequences/entries.ts';
import { csv } from '../../src/documents/formats/csv.ts';
import { english } from '../../src/documents/words.ts';
import { entryValue, gatherWorksheets } from '../../src/documents/worksheets.ts';
import { lawOf } from '../../src/plan/law-of.ts';
import { load } from '../../src/plan/load.ts';
import type { Plan, Radio } from '../../src/plan/model.ts';
import { planCheck } from '../../src/plan/plan-check.ts';

export interface TestedPlan {
  readonly plan: Plan;
  readonly consequences: Consequences;
}

export async function planFrom(text: string): Promise<TestedPlan> {
  const loaded = load(text, 'test.yaml');
  const { plan } = loaded;
  if (plan === undefined) throw new Error(loaded.findings.map(({ message }) => message).join('\n'));
  const folder = new URL('../../plans/', import.meta.url);
  const { law } = await lawOf(plan, loaded, { read: async (path) => readFileSync(new URL(path, folder)) });
  if (law === undefined) throw new Error('no law');
  return { plan, consequences: consequencesOf(plan, law) };
}

/** Column → cell. */
export type Row = Map<string, string>;

/** What the printed worksheet of one kind of radio says, slot by slot. */
export function worksheetRows({ plan, consequences }: TestedPlan, radio: Radio): Row[] {
  const sheet = gatherWorksheets(plan, consequences, planCheck(plan), english).find(
    ({ id }) => id === radio.id,
  );
  if (sheet === undefined) throw new Error(`no worksheet for ${radio.id}`);
  const column = (field: string) => field.replace(/, M?Hz$/, '').toLowerCase();
  return sheet.rows
    .flatMap(({ places }) => places)
    .flatMap((channel) => {
      if (channel.empty) return [];
      const row: Row = new Map([['slot', String(channel.slot)]]);
      for (const { field, value } of [...sheet.same, ...channel.entries]) row.set(column(field), value);
      return [row];
    });
}

export function tableOf(rows: readonly Row[]): string {
  const head = [...new Set(rows.flatMap((row) => [...row.keys()]))];
  return new TextDecoder().decode(
    csv([head, ...rows.map((row) => head.map((column) => row.get(column) ?? ''))]),
  );
}

export function auditOf(
  tested: TestedPlan,
  radio: Radio,
  table: string,
  lastEntries?: readonly Entry[],
): Audit {
  return compareEntries({
    radio,
    entries: entriesOf(tested.plan, tested.consequences, radio),
    entered: readEntries(table, 'entries.csv', radio),
    ...(lastEntries && { lastEntries }),
    say: (entry, field) => entryValue(entry, field, english),
  });
}

export function radioOf({ plan }: TestedPlan, id: string): Radio {
  const radio = plan.radios.get(id);
  if (radio === undefined) throw new Error(`no radio ${id}`);
  return radio;
}
