/**
 * The plan check: four characters, letter-digit-letter-digit, drawn from what a plan means.
 *
 * Members read theirs out at a check-in; one wrong answer finds the stale card. So it must change whenever
 * anything changes that a card, a worksheet or a calendar rests on, and must not change with spacing,
 * comments or the order of keys, nor when a trial is logged, a finding accepted, a note for the booklet
 * reworded, an elevation file renamed, a printer measured or the documents put into another language: those would
 * make every card in the group stale for nothing.
 *
 * Letters and digits that are taken for one another on a wet card (B 8, I 1, O Q 0, S 5, Z 2) are left out,
 * 20 letters and 8 digits remaining: 25 600 codes, so that a stale card passes by chance once in 25 600.
 */
import { createHash } from 'node:crypto';
import type { Plan } from './model.ts';

const letters = 'ACDEFGHJKLMNPRTUVWXY';
const digits = '23456789';

/** Parts of a plan that no card rests on. */
const apart: ReadonlySet<string> = new Set([
  'notes',
  'record',
  'reviewBy',
  'terrain',
  'trials',
  'accepted',
  // Cards in two languages say the same, and their holders read out one code.
  'language',
]);

export function planCheck(plan: Plan): string {
  const parts = Object.entries(plan).filter(([key]) => !apart.has(key));
  // How cards are printed is no part of what they say: a printer that is measured anew leaves every card good.
  const meaning = { ...Object.fromEntries(parts), cards: { notes: plan.cards.notes } };
  const hash = createHash('sha256').update(canonical(meaning)).digest();
  let number = hash.readUIntBE(0, 6);
  let code = '';
  for (const alphabet of [letters, digits, letters, digits]) {
    code += alphabet[number % alphabet.length];
    number = Math.floor(number / alphabet.length);
  }
  return code;
}

/** One spelling for one meaning: keys sorted, maps as sorted pairs, lists in their order. */
function canonical(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (value instanceof Map) {
    const pairs = Array.from(value, ([key, held]) => `${JSON.stringify(String(key))}:${canonical(held)}`);
    return `{${pairs.sort().join(',')}}`;
  }
  let text = '';
  for (const [key, spelled] of sortedKeys(value))
    text += `${text === '' ? '' : ','}${spelled}:${canonical((value as Record<string, unknown>)[key])}`;
  return `{${text}}`;
}

type SpelledKeys = readonly (readonly [key: string, spelled: string])[];

const keysByShape = new Map<string, SpelledKeys>();

/**
 * The keys of an entry in the order of their spelling. Thousands of entries have one of a few sets of keys, all named
 * by the model: whatever has keys of the writer's own is a Map.
 */
function sortedKeys(entry: object): SpelledKeys {
  const keys = Object.keys(entry);
  const shape = keys.join(' ');
  const known = keysByShape.get(shape);
  if (known) return known;
  const spelled = keys
    .map((key) => [key, JSON.stringify(key)] as const)
    .sort(([, a], [, b]) => (a < b ? -1 : 1));
  keysByShape.set(shape, spelled);
  return spelled;
}
