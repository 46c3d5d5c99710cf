/**
 * YAML text to a plain tree, with a way back from any path to its place in the text.
 *
 * The tree holds strings, numbers, booleans, nulls, arrays and objects without a prototype. What YAML
 * would quietly turn into something else keeps its own spelling: `023` stays the text `023` (YAML reads
 * 23), as do `0x1F`, `1e5` and `+5`, so that whoever expects a code or a count can say what is wrong.
 * Depth is checked on the tokens before anything recursive sees them.
 */
import {
  Composer,
  type CST,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type ParsedNode,
  Parser,
  type YAMLError,
} from 'yaml';
import type { PlanPath } from '../findings/finding.ts';

export interface YamlTree {
  /** What the text says, or undefined where it is not YAML. */
  readonly root: unknown;
  readonly problems: readonly YamlProblem[];
  /** Offsets of what a path leads to; where it leads nowhere, of the nearest parent, with `found` false. */
  locate(
    path: PlanPath,
    points: 'key' | 'value',
  ): { readonly from: number; readonly to: number; readonly found: boolean };
}

export interface YamlProblem {
  readonly kind:
    | 'not-yaml'
    | 'duplicate-key'
    | 'too-deep'
    | 'too-many-aliases'
    | 'several-documents'
    | 'bad-key';
  readonly message: string;
  readonly suggestion?: string;
  readonly from: number;
  readonly to: number;
}

/** Plans are four or five levels deep; a file of brackets would otherwise exhaust the stack. */
const deepest = 64;
/** Nodes that aliases may add in all: a plan that repeats itself this much is a mistake or an attack. */
const mostAliasedNodes = 20_000;

export function readYaml(text: string): YamlTree {
  const tokens = [...new Parser().parse(text)];
  const tooDeep = firstTooDeep(tokens);
  if (tooDeep !== undefined) {
    const message = `Brackets or indentation are nested more than ${deepest} levels deep here.`;
    return failed({ kind: 'too-deep', message, from: tooDeep, to: tooDeep + 1 });
  }
  const [document, second] = [
    ...new Composer({ uniqueKeys: false, version: '1.2' }).compose(tokens, true, text.length),
  ];
  if (document === undefined)
    return { root: null, problems: [], locate: () => ({ from: 0, to: 0, found: false }) };

  const problems: YamlProblem[] = [...document.errors, ...document.warnings].map((error) => inWords(error));
  if (second !== undefined) {
    const from = second.range[0];
    const message = 'A second YAML document begins here; a plan is one document.';
    problems.push({
      kind: 'several-documents',
      message,
      suggestion: 'remove the line of three hyphens',
      from,
      to: from + 3,
    });
  }
  const root = problems.length === 0 ? toTree(document, problems) : undefined;
  return { root, problems, locate: (path, points) => locate(document, text, path, points) };
}

function failed(problem: YamlProblem): YamlTree {
  return {
    root: undefined,
    problems: [problem],
    locate: () => ({ from: problem.from, to: problem.to, found: false }),
  };
}

/** Offset of the first token nested too deep, found without recursion. */
function firstTooDeep(tokens: readonly CST.Token[]): number | undefined {
  const waiting: { token: CST.Token; depth: number }[] = tokens.map((token) => ({ token, depth: 0 }));
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { token, depth } = next;
    if (depth > deepest) return token.offset;
    if ('items' in token) {
      for (const item of token.items) {
        for (const inner of [item.key, item.value])
          if (inner) waiting.push({ token: inner, depth: depth + 1 });
      }
    } else if (token.type === 'document' && token.value) waiting.push({ token: token.value, depth });
  }
  return undefined;
}

/** The commonest slips in a coordinator's words; anything else in the parser's. */
function inWords(error: YAMLError): YamlProblem {
  const [from, to] = error.pos;
  const place = { kind: 'not-yaml' as const, from, to: Math.max(to, from + 1) };
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return {
        ...place,
        message: 'This line is indented with a tab; YAML takes only spaces.',
        suggestion: 'two spaces for each level',
      };
    case 'BAD_INDENT':
      return { ...place, message: 'This line is indented differently from the lines it belongs with.' };
    case 'BLOCK_AS_IMPLICIT_KEY':
      return {
        ...place,
        message: 'A second colon on one line: text that holds a colon and a space needs quotes.',
        suggestion: 'quote the text: "…: …"',
      };
    case 'MISSING_CHAR':
      return {
        ...place,
        message: `Something is not closed before this point: ${firstSentence(error.message)}`,
      };
    case 'BAD_ALIAS':
      return {
        ...place,
        message:
          'A `*` begins a reference to an anchor, and there is no such anchor; text that begins with `*` needs quotes.',
      };
    case 'TAG_RESOLVE_FAILED':
      return {
        ...place,
        message: 'A `!` begins a YAML tag, and plans have none; text that begins with `!` needs quotes.',
      };
    default:
      return { ...place, message: `This is not YAML: ${firstSentence(error.message)}` };
  }
}

function firstSentence(message: string): string {
  const line = message.split('\n')[0] ?? message;
  return line.replace(/ at line \d+, column \d+:?$/, '').replace(/[.:]?$/, '.');
}

function toTree(document: Document.Parsed, problems: YamlProblem[]): unknown {
  let aliased = 0;
  const walk = (node: Node | null, insideAlias: boolean): unknown => {
    if (node === null) return null;
    if (insideAlias && ++aliased > mostAliasedNodes) return null;
    if (isAlias(node)) {
      if (aliased > mostAliasedNodes) return null;
      return walk(node.resolve(document) ?? null, true);
    }
    if (isScalar(node)) return scalarValue(node);
    if (isSeq<Node>(node)) return node.items.map((item) => walk(item, insideAlias));
    if (!isMap<Node, Node | null>(node)) return null;
    const object: Record<string, unknown> = Object.create(null);
    for (const pair of node.items) {
      const key = keyText(pair.key);
      const [from, to] = rangeOf(pair.key) ?? [0, 1];
      if (key === undefined || key === '__proto__') {
        problems.push({ kind: 'bad-key', message: 'A key is one word or a number.', from, to });
      } else if (key in object) {
        problems.push({
          kind: 'duplicate-key',
          message: `\`${key}\` stands twice here; the second would hide the first.`,
          suggestion: 'rename or remove one of them',
          from,
          to,
        });
      } else object[key] = walk(pair.value, insideAlias);
    }
    return object;
  };
  const tree = walk(document.contents, false);
  if (aliased > mostAliasedNodes) {
    problems.push({
      kind: 'too-many-aliases',
      message: `Aliases in this file expand to more than ${mostAliasedNodes} entries.`,
      from: 0,
      to: 1,
    });
  }
  return tree;
}

const plainNumber = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;

function scalarValue(node: { value: unknown; source?: string }): unknown {
  const { value, source } = node;
  if (
    typeof value === 'number' &&
    source !== undefined &&
    !(plainNumber.test(source) && Number.isFinite(value))
  )
    return source;
  if (typeof value === 'bigint' || (typeof value === 'number' && !Number.isFinite(value)))
    return source ?? String(value);
  return value;
}

function keyText(key: unknown): string | undefined {
  if (!isScalar(key)) return undefined;
  if (typeof key.value === 'string') return key.value;
  return key.source ?? (key.value === null ? undefined : String(key.value));
}

function rangeOf(node: unknown): readonly [number, number] | undefined {
  const range = (node as ParsedNode | null | undefined)?.range;
  return range ? [range[0], range[1]] : undefined;
}

function locate(document: Document.Parsed, text: string, path: PlanPath, points: 'key' | 'value') {
  let node: unknown = document.contents;
  let here: readonly [number, number] = [0, 0];
  for (const [index, step] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document);
    const last = index === path.length - 1;
    if (isMap(node)) {
      const pair = node.items.find((item: Pair) => keyText(item.key) === String(step));
      if (!pair) return { from: here[0], to: here[1], found: false };
      const key = rangeOf(pair.key) ?? here;
      const value = rangeOf(pair.value);
      // An entry that stands over many lines is pointed at by its key: a caret under a whole block says little.
      const shown =
        value && !text.slice(value[0], value[1]).trimEnd().includes('\n') && value[1] > value[0]
          ? value
          : key;
      here = last && points === 'value' ? shown : key;
      node = pair.value;
    } else if (isSeq(node)) {
      const item: unknown = node.items[Number(step)];
      const range = rangeOf(item);
      if (!range) return { from: here[0], to: here[1], found: false };
      const lineEnd = text.indexOf('\n', range[0]);
      here = [range[0], lineEnd === -1 ? range[1] : Math.min(range[1], lineEnd)];
      node = item;
    } else return { from: here[0], to: here[1], found: false };
  }
  return { from: here[0], to: here[1], found: true };
}
