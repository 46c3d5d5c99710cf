/** A mapping file → which column is which field: one `Head of the column: field` a line, as YAML. */
import { Refusal } from '../findings/refusal.ts';
import { type ImportKind, importField, importFields, leftOut, nearestField } from './import-table.ts';
import { readYaml } from './read-yaml.ts';

/** @throws {Refusal} for a text that is no such mapping, a column the table lacks, or a field there is none of */
export function readMapping(
  text: string,
  file: string,
  kind: ImportKind,
  columns: readonly string[],
): ReadonlyMap<string, string> {
  const { root, problems } = readYaml(text);
  const [problem] = problems;
  if (problem !== undefined || typeof root !== 'object' || root === null || Array.isArray(root))
    throw new Refusal(
      `${file} is no mapping. ${problem?.message ?? ''}`.trim(),
      'Write one column a line: "Call sign": amateur call',
    );
  const mapping = new Map<string, string>();
  for (const [column, written] of Object.entries(root)) {
    if (!columns.includes(column))
      throw new Refusal(
        `${file} maps a column "${column}" that the table does not have.`,
        `It has: ${columns.join(', ')}.`,
      );
    const field = importField(kind, String(written));
    if (field === undefined) {
      const near = nearestField(kind, String(written));
      throw new Refusal(
        `${file} maps "${column}" to "${String(written)}", which is no field.`,
        `${near === undefined ? '' : `Did you mean ${near}? `}Fields are ${[...importFields[kind], leftOut].join(', ')}.`,
      );
    }
    const other = [...mapping].find(([, taken]) => taken === field && field !== leftOut);
    if (other !== undefined)
      throw new Refusal(
        `${file} maps "${other[0]}" and "${column}" both to ${field}.`,
        `Map one of them to ${leftOut}.`,
      );
    mapping.set(column, field);
  }
  return mapping;
}
