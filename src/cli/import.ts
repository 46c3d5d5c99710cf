/** `readback import`: a roster or a table of channels from a spreadsheet, into a plan. */
import { readFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { Refusal } from '../findings/refusal.ts';
import { visibleText } from '../findings/visible-text.ts';
import { appendEntry, inserted } from '../plan/append-entry.ts';
import { decode } from '../plan/decode.ts';
import {
  type ImportKind,
  type ImportOutcome,
  importField,
  importFields,
  importTable,
  leftOut,
  nearestField,
} from '../plan/import-table.ts';
import { load } from '../plan/load.ts';
import { type CsvRow, readCsv } from '../plan/read-csv.ts';
import { readMapping } from '../plan/read-mapping.ts';
import { flowText, scalarText } from '../plan/yaml-text.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { replaceFile } from './replace-file.ts';

export interface ImportOptions {
  readonly kind: ImportKind;
  readonly map?: string;
  readonly ask?: true;
  readonly into?: string;
  readonly dryRun?: true;
  readonly color?: boolean;
}

export async function importFile(path: string, options: ImportOptions): Promise<ExitStatus> {
  const { kind } = options;
  const table = await readText(path);
  const [head, ...rows] = readCsv(table);
  if (head === undefined || rows.length === 0) throw new Refusal(`${path} has no rows below its head.`);
  const columns = head.cells;
  const twice = columns.find((column, at) => column !== '' && columns.indexOf(column) !== at);
  if (twice !== undefined)
    throw new Refusal(`${path} has two columns called ${twice}.`, 'Rename one of them.');
  const plan = options.into === undefined ? undefined : (await loadSubject(options.into, options)).plan;
  let mapping: ReadonlyMap<string, string> = new Map();
  if (options.map !== undefined)
    mapping = readMapping(await readText(options.map), options.map, kind, columns);
  if (options.ask) mapping = await askColumns(kind, head, rows, mapping);
  if (mapping.size === 0)
    throw new Refusal(
      `Which column is what? ${path} has: ${columns.join(', ')}.`,
      `Answer with --ask, or name a file with --map: one line for each column, such as ${scalarText(columns[0] ?? '')}: ${importFields[kind][0]}. Fields are ${importFields[kind].join(', ')}.`,
    );
  const outcome = importTable(kind, table, mapping, plan);
  for (const { line, message } of outcome.problems)
    process.stderr.write(`${path}:${line}: ${visibleText(message)}\n`);
  if (outcome.unmatched.length > 0)
    process.stderr.write(
      `Columns that nothing was said of, left out: ${visibleText(outcome.unmatched.join(', '))}\n`,
    );
  if (outcome.madeIds.length > 0)
    process.stderr.write(`Ids made from the names: ${outcome.madeIds.join(', ')}\n`);
  if (outcome.problems.length > 0) {
    process.stderr.write('Nothing was imported.\n');
    return 1;
  }
  if (options.into === undefined || options.dryRun) process.stdout.write(fragment(outcome));
  if (options.into !== undefined && !options.dryRun) {
    await putInto(options.into, outcome);
    const count = outcome.entries.length;
    const what = count === 1 ? outcome.section.replace(/s$/, '') : outcome.section;
    process.stderr.write(`${count} ${what} put into ${options.into}. Next: readback check ${options.into}\n`);
  }
  return 0;
}

function fragment({ section, entries }: ImportOutcome): string {
  const lines = entries.map(({ key = '', value }) => `  ${key}: ${flowText(value)}`);
  return `${section}:\n${lines.join('\n')}\n`;
}

async function putInto(path: string, { section, entries }: ImportOutcome): Promise<void> {
  const bytes = await readFile(path);
  const mark = bytes.subarray(0, 3).equals(Buffer.from([0xef, 0xbb, 0xbf])) ? '\uFEFF' : '';
  let text = decode(bytes, path);
  for (const entry of entries) {
    const insertion = appendEntry(text, section, entry);
    if (insertion === undefined)
      throw new Refusal(
        `${path} is so written that nothing can be put into its ${section}.`,
        'It is as it was. Leave out --into and paste.',
      );
    text = inserted(text, insertion);
  }
  const [finding] = load(text, path).findings;
  if (finding !== undefined)
    throw new Refusal(
      `The plan would not be one any more: ${finding.path.join('.')}: ${finding.message}`,
      `${path} is as it was. Correct the table and import again.`,
    );
  await replaceFile(path, mark + text);
}

/** Asks of each column that the mapping does not mention. Questions go to standard error. */
async function askColumns(
  kind: ImportKind,
  head: CsvRow,
  rows: readonly CsvRow[],
  known: ReadonlyMap<string, string>,
): Promise<ReadonlyMap<string, string>> {
  const mapping = new Map(known);
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  const typed = lines[Symbol.asyncIterator]();
  process.stderr.write(`Fields: ${importFields[kind].join(', ')}.\nEnter alone leaves a column out.\n`);
  for (const [at, column] of head.cells.entries()) {
    if (column === '' || mapping.has(column)) continue;
    const samples = rows.slice(0, 3).map(({ cells }) => visibleText((cells[at] ?? '').slice(0, 20)));
    process.stderr.write(
      `\nColumn ${at + 1} of ${head.cells.length}, "${visibleText(column)}": ${samples.join(' | ')}\n`,
    );
    for (;;) {
      process.stderr.write('  is: ');
      const next = await typed.next();
      if (!process.stdin.isTTY) process.stderr.write('\n');
      const answer = next.done ? '' : next.value.trim();
      const field = answer === '' ? leftOut : importField(kind, answer);
      const taken = [...mapping].find(([, each]) => each === field && field !== leftOut);
      if (field !== undefined && taken === undefined) {
        mapping.set(column, field);
        break;
      }
      const near = nearestField(kind, answer);
      process.stderr.write(
        taken !== undefined
          ? `  "${taken[0]}" is ${field} already.\n`
          : `  ${answer} is no field.${near === undefined ? '' : ` Did you mean ${near}?`}\n`,
      );
    }
  }
  lines.close();
  const kept = [...mapping].map(([column, field]) => `  ${scalarText(column)}: ${field}`);
  process.stderr.write(`\nThe same as a mapping file:\n${kept.join('\n')}\n\n`);
  return mapping;
}

async function readText(path: string): Promise<string> {
  const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    throw new Refusal(
      error.code === 'ENOENT' ? `There is no file ${path}.` : `${path} could not be read: ${error.message}.`,
      'Check the spelling and the folder.',
    );
  });
  return decode(bytes, path);
}
