/**
 * The table of what was read off a radio → what each slot shows.
 *
 * One row a slot. The head names the columns by the words of the plan language: slot, and any of name, receive,
 * transmit, step, mode, offset direction, offset, tone kind, tone, receive tone, width, power. A column that is
 * missing and a cell that is blank were not read. The word `empty` in any cell says that the slot holds nothing.
 * A column called note or notes is for the reader's own use.
 */
import { nearest } from '../findings/nearest.ts';
import { Refusal } from '../findings/refusal.ts';
import type { EntryField, Radio } from '../plan/model.ts';
import { readCsv } from '../plan/read-csv.ts';
import { readShown, type ShownValues } from './shown-value.ts';

export interface EnteredChannel {
  readonly slot: number;
  /** The radio holds nothing there. */
  readonly empty: boolean;
  readonly shown: ShownValues;
  /** As it was typed, for the fields that were read. */
  readonly typed: ReadonlyMap<EntryField, string>;
}

/** A cell that is there and could not be read. */
export interface UnclearEntry {
  readonly slot: number | undefined;
  readonly field: EntryField | undefined;
  /** Line of the table, counted from 1. */
  readonly line: number;
  readonly message: string;
}

export interface Entered {
  readonly channels: readonly EnteredChannel[];
  readonly unclear: readonly UnclearEntry[];
}

/** In the order in which a table is written. */
export const enteredFields: readonly EntryField[] = [
  'name',
  'receive',
  'transmit',
  'offset-direction',
  'offset',
  'tone-kind',
  'tone',
  'receive-tone',
  'width',
  'power',
  'mode',
  'step',
];

/** The plan language's word for a field, as a person says it: `offset direction`. */
export function fieldWords(field: EntryField): string {
  return field.replaceAll('-', ' ');
}

/** @throws {Refusal} for a table without a slot column, or with a column that means nothing here */
export function readEntries(text: string, file: string, radio: Radio): Entered {
  const [head, ...rows] = readCsv(text);
  if (head === undefined)
    throw new Refusal(`${file} is empty.`, `Its first line names the columns: ${columnNames()}.`);
  const columns = head.cells.map((cell) => columnOf(cell, file));
  if (!columns.includes('slot'))
    throw new Refusal(
      `${file} has no column called slot.`,
      `Its first line names the columns: ${columnNames()}.`,
    );
  const twice = columns.find((column, at) => column !== undefined && columns.indexOf(column) !== at);
  if (twice !== undefined)
    throw new Refusal(
      `${file} has two columns called ${twice.replaceAll('-', ' ')}.`,
      'Remove or rename one of them.',
    );
  const channels = new Map<number, EnteredChannel>();
  const unclear: UnclearEntry[] = [];
  for (const { cells, line } of rows) {
    const written = (cells[columns.indexOf('slot')] ?? '').replace(/^'/, '');
    if (!/^\d{1,4}$/.test(written)) {
      unclear.push({
        slot: undefined,
        field: undefined,
        line,
        message: `"${written.slice(0, 40)}" is not a slot number`,
      });
      continue;
    }
    const slot = Number(written);
    if (channels.has(slot)) {
      unclear.push({
        slot,
        field: undefined,
        line,
        message: `slot ${slot} stands twice; only its first row was read`,
      });
      continue;
    }
    const answers = new Map<EntryField, string>();
    columns.forEach((column, at) => {
      const cell = cells[at] ?? '';
      if (column !== undefined && column !== 'slot' && cell !== '') answers.set(column, cell);
    });
    const read = readChannel(slot, answers, radio);
    channels.set(slot, read.channel);
    unclear.push(...read.unclear.map((each) => ({ ...each, line })));
  }
  return { channels: [...channels.values()].toSorted((a, b) => a.slot - b.slot), unclear };
}

/** What one channel shows, from the answers typed for it. */
export function readChannel(
  slot: number,
  answers: ReadonlyMap<EntryField, string>,
  radio: Radio,
): { readonly channel: EnteredChannel; readonly unclear: readonly Omit<UnclearEntry, 'line'>[] } {
  if ([...answers.values()].some((answer) => /^\(?empty\)?$/i.test(answer.trim())))
    return { channel: { slot, empty: true, shown: {}, typed: new Map() }, unclear: [] };
  const unclear: Omit<UnclearEntry, 'line'>[] = [];
  const typed = new Map<EntryField, string>();
  let shown: ShownValues = {};
  for (const field of enteredFields) {
    const answer = answers.get(field);
    if (answer === undefined || answer.trim() === '') continue;
    const reading = readShown(field, answer, radio, shown.toneKind);
    if (!reading.ok) {
      unclear.push({ slot, field, message: reading.message });
      continue;
    }
    typed.set(field, answer.trim().replace(/^'/, ''));
    const contrary =
      shown.direction !== undefined &&
      reading.values.direction !== undefined &&
      shown.direction !== reading.values.direction;
    if (contrary) {
      unclear.push({
        slot,
        field,
        message: `"${answer}" does not agree with the offset direction of the same row`,
      });
      continue;
    }
    shown = { ...shown, ...reading.values };
  }
  // A size of nothing, where no direction was read, is no shift.
  if (shown.offsetHz === 0 && shown.direction === undefined) shown = { ...shown, direction: 'none' };
  return { channel: { slot, empty: false, shown, typed }, unclear };
}

function columnOf(cell: string, file: string): EntryField | 'slot' | undefined {
  const word = cell
    .toLowerCase()
    .replace(/\s*\(?(?:mhz|khz|hz|w)\)?$/, '')
    .trim()
    .replace(/[\s_]+/g, '-');
  if (word === '' || /^notes?$/.test(word)) return undefined;
  const known: readonly (EntryField | 'slot')[] = ['slot', ...enteredFields];
  const found = known.find((field) => field === word);
  if (found !== undefined) return found;
  const near = nearest(word, known);
  throw new Refusal(
    `${file} has a column "${cell.slice(0, 40)}" that means nothing here.`,
    near === undefined
      ? `Columns are ${columnNames()}.`
      : `Did you mean ${near.replaceAll('-', ' ')}? Columns are ${columnNames()}.`,
  );
}

function columnNames(): string {
  return ['slot', ...enteredFields.map(fieldWords), 'note'].join(', ');
}
