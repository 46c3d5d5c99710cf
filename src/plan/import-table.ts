/**
 * A roster or a table of channels from a spreadsheet → entries of a plan. Which column is what is said by a mapping
 * and never guessed; what a cell does not say plainly is a complaint with its line, and then nothing is imported.
 */
import { nearest } from '../findings/nearest.ts';
import type { NewEntry } from './append-entry.ts';
import { importChannel } from './import-channel.ts';
import { importMember } from './import-member.ts';
import type { Plan } from './model.ts';
import { readCsv } from './read-csv.ts';

export type ImportKind = 'roster' | 'channels';

/** What a column can be mapped to. `amateur call` and `contact phone` stand for any service and any kind of contact. */
export const importFields: Readonly<Record<ImportKind, readonly string[]>> = {
  roster: [
    'id',
    'name',
    'radios',
    'at',
    'roams',
    'SERVICE call',
    'SERVICE class',
    'SERVICE expires',
    'contact WORD',
  ],
  channels: [
    'slot',
    'name',
    'use',
    'receive',
    'transmit',
    'offset direction',
    'offset',
    'listen',
    'standard',
    'tone',
    'receive tone',
    'width',
    'mode',
    'power',
    'service',
  ],
};

/** The word for a column that is left out on purpose. */
export const leftOut = 'leave out';

/** Cells of one row by field. */
export type ImportRow = ReadonlyMap<string, string>;

export interface ImportProblem {
  /** Line of the table, counted from 1. */
  readonly line: number;
  readonly message: string;
}

export interface ImportOutcome {
  readonly section: 'members' | 'channels';
  readonly entries: readonly NewEntry[];
  readonly problems: readonly ImportProblem[];
  /** Columns that no mapping mentions, and that were left out. */
  readonly unmatched: readonly string[];
  /** Ids made from names, which the table does not give. */
  readonly madeIds: readonly string[];
}

/** One member or channel of a row, or what is wrong with the row. */
export type ImportedRow = { readonly entry: NewEntry } | { readonly problem: string };

/** The field a word of a mapping means, or undefined: `Offset_direction`, `amateur call`, `contact phone`. */
export function importField(kind: ImportKind, word: string): string | undefined {
  const text = word
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
  if (text === leftOut) return leftOut;
  if (importFields[kind].includes(text)) return text;
  if (kind === 'roster' && /^(?:[a-z][a-z0-9-]* (?:call|class|expires)|contact [a-z]+)$/.test(text))
    return text;
  return undefined;
}

export function nearestField(kind: ImportKind, word: string): string | undefined {
  return nearest(word, importFields[kind]);
}

/** @param mapping column heads to fields as {@link importField} gives them */
export function importTable(
  kind: ImportKind,
  text: string,
  mapping: ReadonlyMap<string, string>,
  plan: Plan | undefined,
): ImportOutcome {
  const [head, ...rows] = readCsv(text);
  const columns = head?.cells ?? [];
  const section = kind === 'roster' ? 'members' : 'channels';
  const taken = new Set(
    kind === 'roster' ? plan?.members.keys() : [...(plan?.channels.keys() ?? [])].map(String),
  );
  const entries: NewEntry[] = [];
  const problems: ImportProblem[] = [];
  const madeIds: string[] = [];
  const mapped = new Set(mapping.values());
  for (const { cells, line } of rows) {
    const row = new Map<string, string>();
    columns.forEach((column, at) => {
      const field = mapping.get(column);
      const cell = (cells[at] ?? '').replace(/^'/, '').trim();
      if (field !== undefined && field !== leftOut && cell !== '') row.set(field, cell);
    });
    if (row.size === 0) continue;
    const found = kind === 'roster' ? importMember(row, plan, taken) : importChannel(row, mapped);
    if ('problem' in found) {
      problems.push({ line, message: found.problem });
      continue;
    }
    const { key = '' } = found.entry;
    if (taken.has(key)) {
      problems.push({
        line,
        message: `${kind === 'roster' ? `the id ${key}` : `slot ${key}`} is taken already`,
      });
      continue;
    }
    taken.add(key);
    entries.push(found.entry);
    if (kind === 'roster' && !row.has('id')) madeIds.push(key);
  }
  const unmatched = columns.filter((column) => column !== '' && !mapping.has(column));
  return { section, entries, problems, unmatched, madeIds };
}
