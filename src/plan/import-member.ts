/** One row of a roster → a member. */
import { nearest } from '../findings/nearest.ts';
import { idPattern, idWords } from './id-words.ts';
import type { ImportedRow, ImportRow } from './import-table.ts';
import type { Plan } from './model.ts';
import type { YamlValue } from './yaml-text.ts';

/** @param plan where the row goes, whose radios and places it may name; without one any id will do */
export function importMember(
  row: ImportRow,
  plan: Plan | undefined,
  taken: ReadonlySet<string>,
): ImportedRow {
  const name = row.get('name');
  if (name === undefined) return { problem: 'there is no name' };
  const id = row.get('id')?.toLowerCase() ?? idOf(name, taken);
  if (id === undefined || !idPattern.test(id))
    return {
      problem: `${row.has('id') ? `"${row.get('id')}"` : `"${name}"`} makes no id: small letters, digits and hyphens, beginning with a letter`,
    };
  const radios = listed(row.get('radios'), plan?.radios, 'radio');
  const at = listed(row.get('at'), plan?.places, 'place');
  const roams = listed(row.get('roams'), plan?.places, 'place');
  for (const list of [radios, at, roams]) if (typeof list === 'string') return { problem: list };
  const licences = licencesOf(row);
  if (typeof licences === 'string') return { problem: licences };
  const contact = [...row].flatMap(([field, cell]): [string, YamlValue][] =>
    field.startsWith('contact ') ? [[field.slice('contact '.length), cell]] : [],
  );
  const list = (ids: readonly string[] | string) =>
    typeof ids === 'string' || ids.length === 0 ? undefined : { list: ids };
  return {
    entry: {
      key: id,
      value: {
        entries: [
          ['name', name],
          ['licences', licences.length === 0 ? undefined : { entries: licences }],
          ['radios', list(radios)],
          ['at', typeof at === 'string' ? undefined : at[0]],
          ['roams', list(roams)],
          ['contact', contact.length === 0 ? undefined : { entries: contact }],
        ],
      },
    },
  };
}

/** The first name; with the last one where that is taken. */
function idOf(name: string, taken: ReadonlySet<string>): string | undefined {
  const words = idWords(name);
  const [first] = words;
  const long = words.join('-').slice(0, 32);
  return first !== undefined && !taken.has(first) ? first : long || undefined;
}

function licencesOf(row: ImportRow): [string, YamlValue][] | string {
  const services = new Map<string, Map<string, string>>();
  for (const [field, cell] of row) {
    const [, service = '', what = ''] = /^([a-z][a-z0-9-]*) (call|class|expires)$/.exec(field) ?? [];
    if (service === '') continue;
    if (what === 'expires' && !/^\d{4}-\d{2}-\d{2}$/.test(cell))
      return `"${cell}" is not a date written year-month-day, and another order of day and month cannot be told`;
    services.set(service, (services.get(service) ?? new Map()).set(what, cell));
  }
  return [...services].map(([service, held]) => [
    service,
    {
      entries: [
        ['class', held.get('class')?.toLowerCase()],
        ['call', held.get('call')?.toUpperCase()],
        ['expires', held.get('expires')],
      ],
    },
  ]);
}

/** Ids parted by commas, semicolons or strokes; names of the plan's own entries count as their ids. */
function listed(
  cell: string | undefined,
  known: ReadonlyMap<string, { readonly id: string; readonly name: string }> | undefined,
  what: string,
): readonly string[] | string {
  const ids: string[] = [];
  for (const part of (cell ?? '').split(/[,;/]/).map((each) => each.trim())) {
    if (part === '') continue;
    const wanted = part.toLowerCase();
    const entry = [...(known?.values() ?? [])].find(
      ({ id, name }) => id === wanted || name.toLowerCase() === wanted,
    );
    if (entry !== undefined) ids.push(entry.id);
    else if (known === undefined && idPattern.test(wanted)) ids.push(wanted);
    else {
      const near = nearest(wanted, [...(known?.keys() ?? [])]);
      return `"${part}" is no ${what} of the plan${near === undefined ? '' : `; did you mean ${near}`}`;
    }
  }
  return ids;
}
