/** `readback audit`: what was really entered in a radio, against the plan. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { auditJson } from '../audit/audit-json.ts';
import {
  type AuditEntry,
  holdings,
  holdingsText,
  readAuditRecord,
  writeAuditRecord,
} from '../audit/audit-record.ts';
import { type Audit, compareEntries } from '../audit/compare-entries.ts';
import { type Answers, entryConversation } from '../audit/entry-conversation.ts';
import { printAudit } from '../audit/print-audit.ts';
import { enteredFields, fieldWords, readEntries } from '../audit/read-entries.ts';
import { type Entry, entriesOf } from '../consequences/entries.ts';
import { csv } from '../documents/formats/csv.ts';
import { english } from '../documents/words.ts';
import { entryValue } from '../documents/worksheets.ts';
import type { DisplayWidth } from '../findings/display-width.ts';
import { nearest } from '../findings/nearest.ts';
import { Refusal } from '../findings/refusal.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { decode } from '../plan/decode.ts';
import type { Plan, Radio } from '../plan/model.ts';
import { plainSpellingWords } from '../radio/spelling.ts';
import type { ExitStatus } from './end-with.ts';
import { type LoadedSubject, loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { replaceFile } from './replace-file.ts';
import { takeStandardInput } from './standard-input.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { today } from './today.ts';

export interface AuditOptions {
  readonly radio?: string;
  readonly entries?: string;
  readonly ask?: true;
  readonly previous?: string;
  readonly record?: string;
  readonly by?: string;
  readonly for?: string;
  readonly json?: true;
  readonly today?: string;
  readonly color?: boolean;
}

export async function audit(path: string, options: AuditOptions): Promise<ExitStatus> {
  const subject = await loadSubject(path, options);
  const { plan, check } = subject;
  const radio = radioOf(subject, options.radio);
  const date = today(options.today);
  // Somebody without a licence has a sheet of their own, on which nothing is set up to transmit.
  const member = memberOf(plan, options.for);
  const entries = entriesOf(plan, subject.consequences, radio, member);
  if (entries.length === 0)
    throw new Refusal(
      `No channel of the plan fits ${radio.id}, or nobody holds one.`,
      `readback check ${path} says why.`,
    );
  if (options.entries === undefined && !options.ask)
    throw new Refusal(
      'Nothing was read off the radio yet.',
      'Name a table with --entries FILE, or answer questions with --ask.',
    );
  const name = options.entries ?? 'the answers';
  const text = options.ask ? await ask(radio, entries, options.entries) : await readTable(name);
  const last =
    options.previous === undefined ? undefined : await lastEntries(options.previous, radio, options);
  const result = compareEntries({
    radio,
    entries,
    entered: readEntries(text, name, radio),
    ...(last && { lastEntries: last }),
    say: (entry, field) => entryValue(entry, field, english),
  });
  const spoken = { radio: radio.name, title: plan.title, revision: plan.revision, check };
  if (options.json) {
    const head = { plan: subject.file.name, radio: radio.id, revision: plan.revision, check };
    process.stdout.write(`${JSON.stringify(auditJson(result, head), null, 2)}\n`);
  } else {
    const checkWords = plainSpellingWords(check).join(' ');
    const shown = {
      width: columnsOf(process.stdout),
      palette: palette(process.stdout, options),
      widthOf: await displayWidth([subject.file.text, text]),
    };
    const shared =
      member === undefined &&
      entries.some(({ senders, holders }) => senders.length > 0 && senders.length < holders.length);
    process.stdout.write(printAudit(result, { ...spoken, checkWords, forLicensed: shared, ...shown }));
  }
  const record =
    options.record ?? (plan.record === undefined ? undefined : join(subject.file.folder, plan.record));
  if (record !== undefined) await keepRecord(record, result, subject, radio, date, options);
  return result.clean ? 0 : 1;
}

function radioOf({ plan, consequences }: LoadedSubject, id: string | undefined): Radio {
  const radios = [...plan.radios.keys()];
  const list = `The plan has ${radios.join(', ') || 'no radios'}.`;
  const only = radios.filter((each) => consequences.slotsOf(each).length > 0);
  const wanted = id ?? (only.length === 1 ? only[0] : undefined);
  if (wanted === undefined)
    throw new Refusal('Which kind of radio was read?', `Name it with --radio. ${list}`);
  const radio = plan.radios.get(wanted);
  if (radio !== undefined) return radio;
  const near = nearest(wanted, radios);
  throw new Refusal(
    `The plan has no radio ${wanted}.`,
    near === undefined ? list : `Did you mean ${near}? ${list}`,
  );
}

/** A radio of the same id; without one there is nothing to hold against. */
async function lastEntries(
  path: string,
  radio: Radio,
  options: AuditOptions,
): Promise<readonly Entry[] | undefined> {
  const { plan, consequences } = await loadSubject(path, options);
  const old = plan.radios.get(radio.id);
  if (old === undefined)
    process.stderr.write(`${path} has no radio ${radio.id}: its values are not known again.\n`);
  return old && entriesOf(plan, consequences, old, memberOf(plan, options.for));
}

/** The member whose radio it is; undefined where `--for` names none of them, but a serial number or a shelf. */
function memberOf({ members }: Plan, owner: string | undefined): string | undefined {
  return owner !== undefined && members.has(owner) ? owner : undefined;
}

async function readTable(path: string): Promise<string> {
  if (path === '-') {
    const chunks: Buffer[] = [];
    for await (const chunk of takeStandardInput()) chunks.push(chunk as Buffer);
    return decode(Buffer.concat(chunks), 'standard input');
  }
  const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    const missing = error.code === 'ENOENT';
    throw new Refusal(
      missing ? `There is no file ${path}.` : `${path} could not be read: ${error.message}.`,
      missing ? 'Check the spelling, or add --ask to make it by question and answer.' : undefined,
    );
  });
  return decode(bytes, path);
}

/** Questions go to standard error, so that standard output is the audit and nothing else. */
async function ask(radio: Radio, entries: readonly Entry[], file: string | undefined): Promise<string> {
  const kept = file === undefined ? undefined : await readFile(file, 'utf8').catch(() => undefined);
  const answered = kept === undefined ? new Map() : answersOf(kept, file ?? '', radio);
  if (answered.size > 0)
    process.stderr.write(
      `${file} has ${answered.size} slot${answered.size === 1 ? '' : 's'} already; they are not asked again.\n`,
    );
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  const typed = lines[Symbol.asyncIterator]();
  const conversation = entryConversation(radio, entries, answered);
  const width = columnsOf(process.stderr);
  const widthOf = await displayWidth(entries.map(({ name }) => name));
  let turn = conversation.next();
  let saved = answered.size;
  while (!turn.done) {
    const { say, prompt, answers } = turn.value;
    for (const line of say) process.stderr.write(`${wrapped(line, width, widthOf)}\n`);
    if (file !== undefined && answers.size > saved + 1) {
      // Written when a channel is done, so that a closed terminal loses one channel at most.
      await replaceFile(file, tableOf(answers));
      saved = answers.size - 1;
    }
    process.stderr.write(prompt);
    const next = await typed.next();
    if (!process.stdin.isTTY) process.stderr.write('\n');
    turn = conversation.next(next.done ? undefined : next.value);
  }
  lines.close();
  process.stderr.write('\n');
  const table = tableOf(turn.value);
  if (file !== undefined) await replaceFile(file, table);
  return new TextDecoder().decode(table);
}

function wrapped(line: string, width: number, widthOf: DisplayWidth): string {
  const indent = /^ */.exec(line)?.[0] ?? '';
  return wrapText(line, width - indent.length, widthOf)
    .map((part) => indent + part)
    .join('\n');
}

function answersOf(text: string, file: string, radio: Radio): Answers {
  const { channels } = readEntries(text, file, radio);
  return new Map(
    channels
      .filter(({ empty, typed }) => empty || typed.size > 0)
      .map(({ slot, empty, typed }) => [slot, empty ? new Map([['receive' as const, 'empty']]) : typed]),
  );
}

function tableOf(answers: Answers): Uint8Array {
  const fields = enteredFields.filter((field) => [...answers.values()].some((held) => held.has(field)));
  const rows = [...answers].toSorted(([a], [b]) => a - b);
  return csv([
    ['slot', ...fields.map(fieldWords)],
    ...rows.map(([slot, held]) => [slot, ...fields.map((field) => held.get(field) ?? '')]),
  ]);
}

async function keepRecord(
  file: string,
  result: Audit,
  { plan, check }: LoadedSubject,
  radio: Radio,
  date: string,
  options: AuditOptions,
): Promise<void> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw new Refusal(`${file} could not be read: ${error.message}.`);
  });
  const kept = text === undefined ? [] : readAuditRecord(text, file);
  const entry: AuditEntry = {
    date,
    radio: radio.id,
    for: options.for ?? '',
    by: options.by ?? '',
    revision: plan.revision,
    check,
    slots: result.slotsRead,
  };
  const all = result.clean ? [...kept, entry] : kept;
  if (result.clean) await replaceFile(file, writeAuditRecord(all));
  const did = result.clean ? `Recorded in ${file}.` : `Not recorded in ${file}: only a clean audit is.`;
  const out = options.json ? process.stderr : process.stdout;
  const said = all.length === 0 ? did : `${did} ${holdingsText(holdings(all, check))}`;
  out.write(`\n${wrapText(said, columnsOf(out), await displayWidth([said])).join('\n')}\n`);
}
