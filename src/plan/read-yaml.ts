/**
 * YAML text to a plain tree, with a way back from any path to its place in the text.
 *
 * The tree holds strings, numbers, booleans, nulls, arrays and objects without a prototype. What YAML
 * would quietly turn into something else keeps its own spelling: `023` stays the text `023` (YAML reads
 * 23), as do `0x1F`, `1e5` and `+5`, so that whoever expects a code or a count can say what is wrong.
 * Depth is checked on the tokens before anything recursive sees them. Tags and the directives that change
 * what a value means are problems; aliases are followed, up to a limit.
 */
import {
  Composer,
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type ParsedNode,
  type YAMLMap,
} from 'yaml';
import type { PlanPath } from '../findings/finding.ts';
import { deepest, tokensOf, tokenTooDeep } from './nested-too-deep.ts';
import { readPlainYaml } from './read-plain-yaml.ts';
import { noSuchAnchor, tagNotKnown, yamlInWords } from './yaml-in-words.ts';

export interface YamlTree {
  /** What the text says, or undefined where it is not YAML or could not be read whole. */
  readonly root: unknown;
  readonly problems: readonly YamlProblem[];
  /** Offsets of what a path leads to; where it leads nowhere, of the nearest parent, with `found` false. */
  locate(path: PlanPath, points: 'key' | 'value'): Location;
}

interface Location {
  readonly from: number;
  readonly to: number;
  readonly found: boolean;
}

export interface YamlProblem {
  readonly kind:
    | 'not-yaml'
    | 'duplicate-key'
    | 'too-deep'
    | 'too-many-aliases'
    | 'several-documents'
    | 'bad-key'
    | 'cut-text';
  readonly message: string;
  readonly suggestion?: string;
  readonly from: number;
  readonly to: number;
}

/** Nodes that aliases may add in all: a plan that repeats itself this much is a mistake or an attack. */
const mostAliasedNodes = 20_000;

export function readYaml(text: string): YamlTree {
  return readPlainYaml(text) ?? readWholeYaml(text);
}

/** By a parser of the whole language. */
export function readWholeYaml(text: string): YamlTree {
  const bareReturn = /\r(?!\n)/.exec(text)?.index;
  if (bareReturn !== undefined) {
    const message =
      'A carriage return stands here without a line feed, so programs disagree on whether a line ends.';
    const suggestion = 'save the file with LF or CRLF line ends';
    return failed({ kind: 'not-yaml', message, suggestion, from: bareReturn, to: bareReturn + 1 });
  }
  const read = tokensOf(text);
  if ('tooDeepAt' in read) return tooDeep(read.tooDeepAt);
  const { tokens } = read;
  const token = tokenTooDeep(tokens);
  if (token !== undefined) return tooDeep(token);

  const [document, second] = [
    ...new Composer({ uniqueKeys: false, version: '1.2' }).compose(tokens, true, text.length),
  ];
  if (document === undefined)
    return { root: null, problems: [], locate: () => ({ from: 0, to: 0, found: false }) };

  const problems: YamlProblem[] = yamlInWords([...document.errors, ...document.warnings], text).map(
    (complaint) => ({ kind: 'not-yaml', ...complaint }),
  );
  if (document.directives.yaml.explicit === true && document.directives.yaml.version !== '1.2') {
    const from = Math.max(0, text.indexOf('%YAML'));
    const message =
      'A plan is YAML 1.2; this line changes what words such as `no` and numbers such as `010` mean.';
    problems.push({ kind: 'not-yaml', message, suggestion: 'remove the line', from, to: from + 5 });
  }
  if (second !== undefined) {
    const from = second.range[0];
    const message = 'A second YAML document begins here; a plan is one document.';
    const suggestion = 'remove the line of three hyphens';
    problems.push({ kind: 'several-documents', message, suggestion, from, to: from + 3 });
  }
  if (problems.length > 0)
    return { root: undefined, problems, locate: () => ({ from: 0, to: 0, found: false }) };
  return toTree(document, text);
}

function failed(problem: YamlProblem): YamlTree {
  return {
    root: undefined,
    problems: [problem],
    locate: () => ({ from: problem.from, to: problem.to, found: false }),
  };
}

function tooDeep(from: number): YamlTree {
  const message = `Brackets or indentation are nested more than ${deepest} levels deep here.`;
  return failed({ kind: 'too-deep', message, from, to: from + 1 });
}

/** Tags that say what a plain value is anyway. */
const plainTags = new Set(
  ['str', 'int', 'float', 'bool', 'null', 'map', 'seq'].map((name) => `tag:yaml.org,2002:${name}`),
);

function toTree(document: Document.Parsed, text: string): YamlTree {
  const problems: YamlProblem[] = [];
  const complain = (kind: YamlProblem['kind'], node: unknown, message: string, suggestion?: string) => {
    const [from, to] = rangeOf(node) ?? [0, 1];
    problems.push({ kind, message, ...(suggestion !== undefined && { suggestion }), from, to });
  };
  // The parser's own way of following an alias searches the whole document each time.
  const anchors = new Map<string, Node>();
  const targets = new WeakMap<Node, Node>();
  const open = new Set<Node>();
  let aliased = 0;

  const followed = (alias: Node & { source: string }): unknown => {
    const target = anchors.get(alias.source);
    if (target === undefined) complain('not-yaml', alias, noSuchAnchor);
    else if (open.has(target))
      complain('not-yaml', alias, `\`*${alias.source}\` stands inside what it refers to, and so has no end.`);
    else {
      targets.set(alias, target);
      const value = walk(target, true);
      if (aliased <= mostAliasedNodes) return value;
      const message = `Aliases in this file expand to more than ${mostAliasedNodes} entries.`;
      if (problems.at(-1)?.kind !== 'too-many-aliases') complain('too-many-aliases', alias, message);
    }
    return null;
  };
  const walk = (node: Node | null, insideAlias: boolean): unknown => {
    if (node === null || aliased > mostAliasedNodes) return null;
    if (insideAlias && ++aliased > mostAliasedNodes) return null;
    if (isAlias(node)) return followed(node);
    if (!insideAlias && 'anchor' in node && node.anchor !== undefined) anchors.set(node.anchor, node);
    if (node.tag !== undefined && !plainTags.has(node.tag)) {
      complain('not-yaml', node, tagNotKnown);
      return null;
    }
    if (isScalar(node)) {
      const { value, type, comment } = node;
      if (type === 'PLAIN' && typeof value === 'string' && comment && /^\d/.test(comment)) {
        const message = `\`#${comment}\` is read as a comment and lost: a number sign after a space begins one, so text with one needs quotes.`;
        complain('cut-text', node, message, `"${value} #${comment}"`);
      }
      return scalarValue(node);
    }
    open.add(node);
    const value = isSeq<Node>(node)
      ? node.items.map((item) => walk(item, insideAlias))
      : isMap<Node, Node | null>(node)
        ? object(node, insideAlias)
        : null;
    open.delete(node);
    return value;
  };
  const object = (node: YAMLMap<Node, Node | null>, insideAlias: boolean): unknown => {
    const entries: Record<string, unknown> = Object.create(null);
    for (const pair of node.items) {
      const key = keyText(pair.key);
      if (key === undefined) complain('bad-key', pair.key, 'A key is one word or a number.');
      else if (key === '__proto__') complain('bad-key', pair.key, '`__proto__` cannot be a key.');
      else if (key in entries) {
        const message = `\`${key}\` stands twice here; the second would hide the first.`;
        complain('duplicate-key', pair.key, message, 'rename or remove one of them');
      } else entries[key] = walk(pair.value, insideAlias);
    }
    return entries;
  };
  const tree = walk(document.contents, false);
  const whole = !problems.some(({ kind }) => kind === 'not-yaml' || kind === 'too-many-aliases');
  return { root: whole ? tree : undefined, problems, locate: locator(document, text, targets) };
}

const plainNumber = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;

function scalarValue(node: { value: unknown; source?: string }): unknown {
  const { value, source } = node;
  if (typeof value === 'bigint') return source ?? String(value);
  if (typeof value !== 'number') return value;
  const asWritten = source === undefined || plainNumber.test(source);
  const exact = Number.isFinite(value) && (!Number.isInteger(value) || Number.isSafeInteger(value));
  return asWritten && exact ? value : (source ?? String(value));
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

/** Where a node ends, without the comments and line ends that the parser counts to a block. */
function endOf(node: unknown): number | undefined {
  if ((isMap(node) || isSeq(node)) && node.flow !== true) {
    const last: unknown = node.items.at(-1);
    if (!isPair(last)) return endOf(last);
    const [from, to] = [rangeOf(last.value)?.[0] ?? 0, endOf(last.value) ?? 0];
    // Nothing after the colon.
    return to > from ? to : (endOf(last.key) ?? 0) + 1;
  }
  return rangeOf(node)?.[1];
}

function locator(document: Document.Parsed, text: string, targets: WeakMap<Node, Node>): YamlTree['locate'] {
  // Each mapping's keys are listed once: a file may hold thousands of keys, each with something wrong.
  const keysOf = new WeakMap<YAMLMap, Map<string, Pair>>();
  const pairOf = (map: YAMLMap, step: string): Pair | undefined => {
    let pairs = keysOf.get(map);
    if (pairs === undefined) {
      pairs = new Map();
      for (const pair of map.items) {
        const key = keyText(pair.key);
        if (key !== undefined && !pairs.has(key)) pairs.set(key, pair);
      }
      keysOf.set(map, pairs);
    }
    return pairs.get(step);
  };
  return (path, points) => {
    let node: unknown = document.contents;
    let here: readonly [number, number] = [0, 0];
    for (const [index, step] of path.entries()) {
      if (isAlias(node)) node = targets.get(node);
      const last = index === path.length - 1;
      if (isMap(node)) {
        const pair = pairOf(node, String(step));
        if (!pair) return { from: here[0], to: here[1], found: false };
        const key = rangeOf(pair.key) ?? here;
        const value = rangeOf(pair.value);
        // An entry that stands over many lines is pointed at by its key: a caret under a whole block says little.
        const end = endOf(pair.value) ?? 0;
        const shown =
          value && end > value[0] && !text.slice(value[0], end).includes('\n')
            ? ([value[0], end] as const)
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
  };
}
