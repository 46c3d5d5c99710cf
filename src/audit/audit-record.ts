/**
 * The record of clean audits, kept beside the plan as JSON: which radio was found to hold which revision, when,
 * and read by whom.
 */
import { Refusal } from '../findings/refusal.ts';

export interface AuditEntry {
  /** ISO date. */
  readonly date: string;
  /** The kind of radio, by its id in the plan. */
  readonly radio: string;
  /** Whose radio it is, or its serial number; empty where neither was given. */
  readonly for: string;
  /** Who read it back; empty where not given. */
  readonly by: string;
  readonly revision: number;
  readonly check: string;
  /** How many slots were read. */
  readonly slots: number;
}

export interface Holding extends AuditEntry {
  /** Holds the plan as it is now. */
  readonly current: boolean;
}

const version = 1;

/** @throws {Refusal} for a text that is no such record: it is somebody's signature and is never overwritten */
export function readAuditRecord(text: string, file: string): readonly AuditEntry[] {
  const wrong = (what: string) =>
    new Refusal(
      `${file} is no record of audits: ${what}.`,
      'Name another file with --record; this one was not changed.',
    );
  let root: unknown;
  try {
    root = JSON.parse(text);
  } catch {
    throw wrong('it is not JSON');
  }
  if (!isObject(root) || root['readback-record'] !== version || !Array.isArray(root['audits']))
    throw wrong(`it does not begin with "readback-record": ${version}`);
  return root['audits'].map((item: unknown, index) => {
    const entry = isObject(item) ? auditEntry(item) : undefined;
    if (entry === undefined)
      throw wrong(`its audit ${index + 1} lacks a date, a radio, a revision or a plan check`);
    return entry;
  });
}

export function writeAuditRecord(entries: readonly AuditEntry[]): string {
  return `${JSON.stringify({ 'readback-record': version, audits: entries }, null, 2)}\n`;
}

/** The last audit of each radio, told apart by kind and owner, in the order in which they were first recorded. */
export function holdings(entries: readonly AuditEntry[], check: string): readonly Holding[] {
  const latest = new Map<string, AuditEntry>();
  for (const entry of entries) {
    const key = JSON.stringify([entry.radio, entry.for]);
    const known = latest.get(key);
    if (known === undefined || known.date <= entry.date) latest.set(key, entry);
  }
  return [...latest.values()].map((entry) => ({ ...entry, current: entry.check === check }));
}

/** What the record says in one sentence: "The record: 3 radios hold this revision; 1 holds an older one (inez, revision 2)." */
export function holdingsText(held: readonly Holding[]): string {
  const stale = held.filter(({ current }) => !current);
  const now = held.length - stale.length;
  const radios = (count: number) =>
    `${count === 0 ? 'no' : count} radio${count === 1 ? '' : 's'} hold${count === 1 ? 's' : ''}`;
  const first = `The record: ${radios(now)} this plan`;
  if (stale.length === 0) return `${first}, none another.`;
  const names = stale.map(
    (entry) => `${entry.for || entry.radio}: revision ${entry.revision}, ${entry.check}`,
  );
  return `${first}; ${stale.length} hold${stale.length === 1 ? 's' : ''} another (${names.join('; ')}).`;
}

function auditEntry(item: Readonly<Record<string, unknown>>): AuditEntry | undefined {
  const { date, radio, revision, check, slots } = item;
  if (
    typeof date !== 'string' ||
    typeof radio !== 'string' ||
    typeof revision !== 'number' ||
    typeof check !== 'string'
  )
    return undefined;
  const text = (value: unknown) => (typeof value === 'string' ? value : '');
  return {
    date,
    radio,
    for: text(item['for']),
    by: text(item['by']),
    revision,
    check,
    slots: typeof slots === 'number' ? slots : 0,
  };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
