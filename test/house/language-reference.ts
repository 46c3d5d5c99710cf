/** The reference of the plan language, made from the schema that loads plans. */
import { jsonSchema } from '../../src/plan/json-schema.ts';

/** The parts of JSON Schema (draft-07) that the plan's schema uses. */
interface Schema {
  readonly title?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema | readonly Schema[];
}

export function languageReference(): string {
  const { properties = {}, required = [] } = jsonSchema() as Schema;
  const sections = Object.entries(properties).map(([name, schema]) => {
    const must = required.includes(name) ? 'Must be there.' : undefined;
    const about = [schema.description, must].filter(Boolean).join(' ');
    const inner = [...rows(schema, '', 0)];
    if (inner.length === 0) return `## ${name}\n\n${about} Holds ${holds(schema)}.\n`;
    return `## ${name}\n\n${about || `Holds ${holds(schema)}.`}\n\n| key | holds | if left out | what it says |\n| --- | --- | --- | --- |\n${inner.join('\n')}\n`;
  });
  return `# The plan language, version 1

<!-- Generated from schema.ts by \`npm run generate\`; change that, not this page. -->

One YAML 1.2 file describes one group's plan. Keys are added to the language and never renamed: a plan that is
valid stays valid. \`ID\` stands for an id of your own: a small letter, then small letters, digits and hyphens, 32
at most. \`SLOT\` is a memory slot, a whole number. \`[]\` stands for each item of a list. Units may be written
(\`5 W\`, \`500 mW\`, \`-600 kHz\`, \`12 h\`); a bare number takes the unit named here, frequencies MHz. Editors read
[plan.schema.json](plan.schema.json), which \`readback schema\` prints as well; \`readback new FILE\` writes a plan to
start from.

## Words

| word | meaning |
| --- | --- |
| slot | the number under which every radio of the group keeps a channel |
| ladder, rung | what to try, in order, when a call is not answered; one step of it |
| net control | whoever calls the roll at a check-in |
| plan check | four characters drawn from what the plan means, printed on every card: a stale card has another |
| a path closes | a call gets across it, both ways |
| margin | decibels by which a signal is stronger than its hearer needs; below zero it is too weak |
| segment | a stretch of frequencies that the law or a band plan keeps for something |
| privileges | where a class of licence may transmit |
| dBd, dBi | antenna gain over a half-wave dipole, or over an isotropic antenna: 0 dBd is 2.15 dBi |
| sensitivity | the weakest signal heard with 12 dB SINAD, from the radio's manual, often -119 dBm or 0.25 uV |
| counterpoise | a quarter-wave wire hung below a hand-held, or the metal roof under a whip |
| digipeater, mailbox | a packet station that repeats frames; one that keeps messages |

Elevation files are GeoTIFF or SRTM tiles (.hgt) in degrees (WGS 84); national mapping agencies and the U.S.
Geological Survey give them away.

${sections.join('\n')}`;
}

function* rows(schema: Schema, path: string, depth: number): Generator<string> {
  const { properties, required = [], additionalProperties, items } = schema;
  if (
    depth > 0 &&
    properties === undefined &&
    isSchema(additionalProperties) &&
    !hasKeys(additionalProperties)
  )
    return;
  if (properties !== undefined) {
    for (const [key, value] of Object.entries(properties)) {
      const at = path === '' ? key : `${path}.${key}`;
      yield row(at, value, required.includes(key));
      yield* rows(value, at, depth + 1);
    }
  } else if (isSchema(additionalProperties)) {
    const at = `${path === '' ? '' : `${path}.`}${keyName(schema)}`;
    if (hasKeys(additionalProperties)) yield* rows(additionalProperties, at, depth + 1);
    else yield row(at, additionalProperties, false);
  } else if (isSchema(items) && hasKeys(items)) {
    yield* rows(items, `${path}[]`, depth + 1);
  }
}

function keyName(schema: Schema): string {
  const names = (schema as { propertyNames?: { pattern?: string } }).propertyNames;
  return names?.pattern?.includes('\\d{0,3}') ? 'SLOT' : 'ID';
}

function row(at: string, schema: Schema, must: boolean): string {
  const without = must ? '**must be there**' : defaultText(schema.default);
  return `| \`${at}\` | ${cell(holds(schema))} | ${cell(without)} | ${cell(schema.description ?? '')} |`;
}

function holds(schema: Schema): string {
  if (schema.const !== undefined) return `\`${schema.const}\``;
  if (schema.enum !== undefined) return schema.enum.map((word) => `\`${word}\``).join(', ');
  if (schema.title !== undefined) return schema.title;
  if (schema.anyOf !== undefined) return schema.anyOf.map(holds).join('; or ');
  if (isSchema(schema.items)) return `a list: ${holds(schema.items)}`;
  if (schema.type === 'object') return 'a mapping';
  if (schema.type === 'array') return 'a pair';
  return [schema.type ?? 'text'].flat().join(' or ');
}

function defaultText(value: unknown): string {
  if (value === undefined) return '';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : `\`[${value.join(', ')}]\``;
  if (typeof value === 'object' && value !== null) return Object.keys(value).length === 0 ? 'none' : '';
  return `\`${value}\``;
}

function hasKeys(schema: Schema): boolean {
  return schema.properties !== undefined;
}

function isSchema(schema: unknown): schema is Schema {
  return typeof schema === 'object' && schema !== null && !Array.isArray(schema);
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
