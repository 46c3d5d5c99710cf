/** Values as YAML 1.2 text, for entries that are written into a plan by the program. */

/** A text, a number with the digits it is to have, a list, or entries by key; undefined entries are left out. */
export type YamlValue =
  | string
  | { readonly figure: string }
  | { readonly list: readonly YamlValue[] }
  | { readonly entries: readonly (readonly [string, YamlValue | undefined])[] };

/** Read by YAML as themselves, without quotes: letters and figures and a few signs, neither a number nor a word it takes for a value. */
const plain = /^[A-Za-z0-9](?:[A-Za-z0-9 ()/.;'+-]*[A-Za-z0-9().'+])?$/;
const taken =
  /^(?:[-+.]?[\d._]+(?:e[-+]?\d+)?|0[xob][\da-f]+|true|false|yes|no|on|off|null|y|n|[.](?:inf|nan)|\d{1,3}(?::\d{1,2})+)$/i;
const isoDate = /^\d{4}-\d{2}-\d{2}$/;

export function scalarText(text: string): string {
  if (isoDate.test(text) || (plain.test(text) && !taken.test(text))) return text;
  // Double-quoted YAML takes every escape of JSON; what JSON leaves bare and YAML breaks at is escaped besides.
  return JSON.stringify(text).replace(/[\u007f-\u009f\u2028\u2029\ufeff]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}

/** On one line: `{ name: Ward, radios: [handheld] }`. */
export function flowText(value: YamlValue): string {
  if (typeof value === 'string') return scalarText(value);
  if ('figure' in value) return value.figure;
  if ('entries' in value) {
    const pairs = written(value).map(([key, held]) => `${scalarText(key)}: ${flowText(held)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  return `[${value.list.map(flowText).join(', ')}]`;
}

/** One line an entry, without indentation; what they hold stays on their line. */
export function blockLines(value: Extract<YamlValue, { entries: unknown }>): readonly string[] {
  return written(value).map(([key, held]) => `${scalarText(key)}: ${flowText(held)}`);
}

function written(value: Extract<YamlValue, { entries: unknown }>): readonly (readonly [string, YamlValue])[] {
  return value.entries.flatMap(([key, held]) => (held === undefined ? [] : [[key, held] as const]));
}
