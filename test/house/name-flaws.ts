/** What is wrong with the name of a file, or with how it exports. */

const rooms = [
  'findings',
  'radio',
  'regulations',
  'reach',
  'airtime',
  'schedule',
  'fallback',
  'plan',
  'consequences',
  'checks',
  'audit',
  'documents',
  'cli',
];

/** Names that gather what has no subject. */
const drawers = /^(?:utils?|common|types|constants|helpers?|shared|misc|lib)$/;

/** @param file path from the root of the project */
export function nameFlaws(file: string): readonly string[] {
  const parts = file.split('/');
  const name = (parts.at(-1) ?? '').replace(/(?:\.(?:test|fixture|config|d))?\.ts$/, '');
  const flaws: string[] = [];
  if (parts[0] === 'src' && !rooms.includes(parts[1] ?? '') && file !== 'src/pipeline.ts')
    flaws.push('stands in no room');
  if ([...parts.slice(1, -1), name].some((part) => drawers.test(part)))
    flaws.push('is a drawer, not a subject');
  if (name === 'index') flaws.push('is named index');
  if (
    file.endsWith('.ts') &&
    parts
      .slice(1, -1)
      .concat(name)
      .some((part) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(part))
  ) {
    flaws.push('is not in kebab-case');
  }
  return flaws.map((flaw) => `${file} ${flaw}`);
}

/** Files that only pass on what others export, and default exports, which have no name to search for. */
export function exportFlaws(file: string, text: string): readonly string[] {
  const flaws: string[] = [];
  if (/^export\s+default\b/m.test(text)) flaws.push(`${file} has a default export`);
  const exports = text.match(/^export\b.*$/gm) ?? [];
  const passedOn = text.match(/^export\s+(?:type\s+)?(?:\*|\{)[^;]*?\bfrom\b/gm) ?? [];
  if (exports.length > 0 && passedOn.length === exports.length)
    flaws.push(`${file} only passes on other files`);
  return flaws;
}

/** Words that point at where the project was made instead of at a published source, and work left undone. */
const phrases: readonly RegExp[] = [
  /\.\.\/shared\b/,
  /\/work\/(?:main|shared)\b/,
  /\breference sheet/i,
  /\bissue #\d|\b(?:see|in|per|for|from) issue \d/i,
  /\bTODO\b|\bFIXME\b|\bnot (?:yet )?implemented\b/i,
  /\blanguage model\b|\bAI[- ](?:generated|assistant)\b/i,
  /@ts-(?:ignore|nocheck)/,
];

export function phraseFlaws(file: string, text: string): readonly string[] {
  return text
    .split('\n')
    .flatMap((line, index) =>
      phrases
        .filter((phrase) => phrase.test(line))
        .map((phrase) => `${file}:${index + 1} says ${phrase.exec(line)?.[0]}`),
    );
}
