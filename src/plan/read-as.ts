/**
 * Text to what a schema makes of it: parsed with positions, validated; or every error of the file at once, each
 * a sentence at its place. Plans and rules files are both read so.
 */
import type * as z from 'zod';
import type { Finding, Place, PlanPath } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { SourceText } from '../findings/source-text.ts';
import { likelyId } from './id-words.ts';
import { readYaml, type YamlTree } from './read-yaml.ts';

/** What messages say of a kind of file. */
export interface FileKind {
  readonly noun: string;
  /** What an empty one should begin with. */
  readonly begins: string;
  /** The first key of another kind of file, and what to do with such a file here. */
  readonly other?: { readonly key: string; readonly sentence: string };
  /** A sentence about a key that is unknown for a reason. */
  refusedKey?(key: string, path: PlanPath): string | undefined;
}

export interface ReadFile<Read> {
  /** Absent when the text has errors. */
  readonly read?: Read;
  readonly findings: readonly Finding[];
  readonly text: SourceText;
  /** Where a path of the file stands in the text; where it leads nowhere, its nearest parent. */
  placeOf(path: PlanPath, points?: 'key' | 'value'): Place;
}

/** Characters above which checks are compiled first. */
const largeText = 200_000;

export interface ReadTree {
  readonly root: unknown;
  /** What is wrong with the writing; the tree of a text with errors is not to be used. */
  readonly findings: readonly Finding[];
  readonly text: SourceText;
  placeOf(path: PlanPath, points?: 'key' | 'value'): Place;
  readonly tree: YamlTree;
}

/** Text to the mappings, lists and values that stand in it, not yet held against anything. */
export function readTree(content: string, file: string, kind: FileKind): ReadTree {
  const text = new SourceText(file, content);
  const tree = readYaml(content);
  const placeOf = (path: PlanPath, points: 'key' | 'value' = 'value'): Place => {
    const { from, to } = tree.locate(path, points);
    return text.placeAt(from, to);
  };
  const findings = tree.problems.map(({ kind, message, suggestion, from, to }) =>
    languageFinding(`plan/${kind}`, message, [], text.placeAt(from, to), suggestion),
  );
  if (tree.root === null) {
    const message = `The file is empty; a ${kind.noun} begins with ${kind.begins}.`;
    findings.push(languageFinding('plan/missing-entry', message, [], text.placeAt(0, 0)));
  }
  return { root: tree.root ?? undefined, findings, text, placeOf, tree };
}

/** Text to what a schema makes of it, or every error of the file at once. */
export function readAs<Schema extends z.ZodType>(
  content: string,
  file: string,
  schema: Schema,
  kind: FileKind,
): ReadFile<z.output<Schema>> {
  const { root, findings: problems, text, placeOf, tree } = readTree(content, file, kind);
  if (root === undefined) return { findings: problems, text, placeOf };
  const { other } = kind;
  if (other !== undefined && typeof root === 'object' && root !== null && other.key in root) {
    const finding = languageFinding(
      'plan/unknown-key',
      other.sentence,
      [other.key],
      placeOf([other.key], 'key'),
    );
    return { findings: [...problems, finding], text, placeOf };
  }
  // Compiling the checks of a schema pays where thousands of entries go through them.
  const read = schema.safeParse(tree.root, { jitless: content.length < largeText });
  const findings = [...problems];
  // An alias brings one wrong value to several entries, and a number may be wrong twice over: said once.
  const said = new Set<string>();
  for (const issue of read.error?.issues ?? []) {
    for (const finding of issueFindings(issue, tree, placeOf, kind)) {
      const { line, column } = finding.place;
      const key = `${line}:${column} ${finding.rule} ${finding.message}`;
      if (!said.has(key)) findings.push(finding);
      said.add(key);
    }
  }
  if (!read.success || findings.length > 0) return { findings, text, placeOf };
  return { read: read.data, findings: [], text, placeOf };
}

/** The key that was meant by one with a leading zero, a capital or a space. */
function likelyKey(key: string, expected: string): string | undefined {
  if (expected.startsWith('an id')) return likelyId(key);
  const slot = Number(key);
  return expected.startsWith('a slot') && key !== '' && Number.isInteger(slot) && slot >= 0
    ? String(slot)
    : undefined;
}

function* issueFindings(
  issue: z.core.$ZodIssue,
  tree: YamlTree,
  placeOf: ReadFile<unknown>['placeOf'],
  kind: FileKind,
): Generator<Finding> {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') {
    const known = issue.message.split(' ');
    for (const key of issue.keys) {
      const at = [...path, key];
      const refused = kind.refusedKey?.(key, path);
      if (refused !== undefined) {
        yield languageFinding('plan/unknown-key', refused, at, placeOf(at, 'key'));
        continue;
      }
      const message = `\`${key}\` is not a key ${path.length === 0 ? `of a ${kind.noun}` : `that \`${path.join('.')}\` can have`}.`;
      const near = nearest(key, known);
      if (/[\s,]/.test(key) && near === undefined) {
        yield languageFinding('plan/unknown-key', cutByComma(key), at, placeOf(at, 'key'));
        continue;
      }
      yield languageFinding(
        'plan/unknown-key',
        near ? message : `${message} It can have: ${known.join(', ')}.`,
        at,
        placeOf(at, 'key'),
        near,
      );
    }
    return;
  }
  if (issue.code === 'invalid_key') {
    const expected = issue.issues[0]?.message ?? issue.message;
    const key = String(path.at(-1));
    yield languageFinding(
      'plan/bad-key',
      `\`${key}\` is not ${expected}.`,
      path,
      placeOf(path, 'key'),
      likelyKey(key, expected),
    );
    return;
  }
  const { found } = tree.locate(path, 'value');
  const meant = issue.code === 'invalid_union' && found ? nearestBranch(issue) : undefined;
  if (meant !== undefined) {
    for (const inner of meant)
      yield* issueFindings({ ...inner, path: [...issue.path, ...inner.path] }, tree, placeOf, kind);
    return;
  }
  if (issue.code === 'custom') {
    const suggestion = issue.params?.['suggestion'];
    yield languageFinding(
      'plan/wrong-value',
      issue.message,
      path,
      placeOf(path),
      typeof suggestion === 'string' ? suggestion : undefined,
    );
    return;
  }
  const [expected = '', suggestion] = issue.message.split('\n');
  const last = String(path.at(-1));
  if (found && /\s/.test(last) && valueAt(tree.root, path) === null) {
    yield languageFinding('plan/unknown-key', cutByComma(last), path, placeOf(path, 'key'));
    return;
  }
  if (!found) {
    const owner = path.length > 1 ? `\`${path.slice(0, -1).join('.')}\`` : `The ${kind.noun}`;
    yield languageFinding(
      'plan/missing-entry',
      `${owner} has no \`${last}\`${saysNoMore(expected, last) ? '' : `: ${expected.replace(/\.$/, '')}`}.`,
      path,
      placeOf(path),
    );
    return;
  }
  yield languageFinding(
    'plan/wrong-value',
    `Expected ${expected}; found ${shown(valueAt(tree.root, path))}.`,
    path,
    placeOf(path),
    suggestion,
  );
}

/** "Has no `name`: a name" would say it twice. */
function saysNoMore(expected: string, key: string): boolean {
  return expected === `a ${key}` || expected === `an ${key}`;
}

function cutByComma(key: string): string {
  return `\`${key}\` is read as a key, because inside { } a comma ends the text before it; text with a comma needs quotes.`;
}

/**
 * Of the ways in which a value may be written, the one that was meant: its issues lie inside the value, or say
 * in words what is wrong with it, where the other ways fail at once.
 */
function nearestBranch(issue: z.core.$ZodIssueInvalidUnion): readonly z.core.$ZodIssue[] | undefined {
  return issue.errors.find(
    (branch) =>
      branch.length > 0 && branch.every((inner) => inner.path.length > 0 || inner.code === 'custom'),
  );
}

/** An error in how a file is written, by one of the rules of the language. */
export function languageFinding(
  rule: string,
  message: string,
  path: PlanPath,
  place: Place,
  suggestion?: string,
): Finding {
  const finding: Finding = { rule, severity: 'error', basis: 'consistency', message, path, place };
  return suggestion === undefined ? finding : { ...finding, suggestion };
}

function valueAt(root: unknown, path: PlanPath): unknown {
  let value = root;
  for (const step of path) value = (value as Record<string, unknown> | null)?.[String(step)];
  return value;
}

/** What was found, short enough for a sentence. */
export function shown(value: unknown): string {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object') return 'a mapping';
  const text = String(value);
  const cut = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  return typeof value === 'string' ? `\`${cut}\`` : typeof value === 'number' ? `the number ${cut}` : cut;
}
