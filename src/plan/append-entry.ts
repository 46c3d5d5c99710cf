/**
 * One more entry in a section of a plan, with every byte of the rest as it was: comments, blank lines, alignment,
 * line ends. The text is never written anew from what was read; one piece is put in at one place.
 */
import {
  isAlias,
  isCollection,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import { blockLines, flowText, scalarText, type YamlValue } from './yaml-text.ts';

export interface Insertion {
  /** Offset in the old text, UTF-16 units. */
  readonly at: number;
  readonly piece: string;
}

export interface NewEntry {
  /** For a section of entries by key; a list has none. */
  readonly key?: string;
  readonly value: Extract<YamlValue, { entries: unknown }>;
}

/**
 * Where in a well-formed plan the entry goes and how it is spelled: in the style of the entry before it, or in a
 * section of its own at the end. Undefined where the section is something that nothing can be put into, an alias.
 */
export function appendEntry(text: string, section: string, entry: NewEntry): Insertion | undefined {
  const document = parseDocument(text, { version: '1.2', keepSourceTokens: true, uniqueKeys: false });
  const root = document.contents;
  if (!isMap<Node, Node | null>(root)) return undefined;
  const pair = root.items.find(({ key }) => isScalar(key) && key.value === section);
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  if (pair === undefined) {
    const kept = root.flow ? `${section}: ${wholeSection(entry)}` : undefined;
    return kept === undefined ? newSection(text, root, section, entry, eol) : intoFlow(text, root, kept, eol);
  }
  const { value } = pair;
  if (value === null || (isScalar(value) && (value.source ?? '') === '')) {
    const at = lineEnd(text, deepEnd(pair.key));
    const indent = root.flow ? undefined : ' '.repeat(indentOf(root) + 2);
    return indent === undefined ? undefined : { at, piece: eol + blockEntry(entry, indent, 'flow', eol) };
  }
  if (!isMap(value) && !isSeq(value)) return undefined;
  if (value.flow) return intoFlow(text, value, flowEntry(entry), eol);
  return intoBlock(text, value, entry, eol);
}

/** The text with the piece in it. */
export function inserted(text: string, { at, piece }: Insertion): string {
  return text.slice(0, at) + piece + text.slice(at);
}

function flowEntry({ key, value }: NewEntry): string {
  return key === undefined ? flowText(value) : `${scalarText(key)}: ${flowText(value)}`;
}

function wholeSection(entry: NewEntry): string {
  return entry.key === undefined ? `[ ${flowEntry(entry)} ]` : `{ ${flowEntry(entry)} }`;
}

/** Without a line end after it. */
function blockEntry({ key, value }: NewEntry, indent: string, style: 'flow' | 'block', eol: string): string {
  const head = key === undefined ? '-' : `${key}:`;
  if (style === 'flow') return `${indent}${head} ${flowText(value)}`;
  const lines = blockLines(value);
  if (key !== undefined) return [`${indent}${head}`, ...lines.map((line) => `${indent}  ${line}`)].join(eol);
  return lines.map((line, index) => `${indent}${index === 0 ? '- ' : '  '}${line}`).join(eol);
}

function intoBlock(text: string, value: YAMLMap | YAMLSeq, entry: NewEntry, eol: string): Insertion {
  const last: unknown = value.items.at(-1);
  const held: unknown = isPair(last) ? last.value : last;
  const style = isCollection(held) && !held.flow ? 'block' : 'flow';
  const piece = blockEntry(entry, ' '.repeat(indentOf(value)), style, eol);
  const end = deepEnd(last);
  // A block of text ends after its line end.
  if (text[end - 1] === '\n') return { at: end, piece: piece + eol };
  return { at: lineEnd(text, end), piece: eol + piece };
}

function intoFlow(text: string, value: YAMLMap | YAMLSeq, piece: string, eol: string): Insertion {
  const [from = 0, to = 0] = value.range ?? [];
  const close = to - 1;
  const last: unknown = value.items.at(-1);
  if (last === undefined) {
    const inside = text.slice(from + 1, close);
    return {
      at: close,
      piece: inside.trim() === '' && inside !== '' && !inside.includes('\n') ? `${piece} ` : piece,
    };
  }
  const end = deepEnd(last);
  const rest = text.slice(end, close);
  const indent = /(?:^|\n)([ \t]*)[^\n]*$/.exec(text.slice(0, startOf(last)))?.[1] ?? '';
  const first = text.slice(from, startOf(value.items[0]));
  const gap = first.includes('\n') ? eol + indent : ' ';
  const comma = commaIn(rest);
  const comment = rest.includes('#');
  if (comma === undefined && !comment) return { at: end, piece: `,${gap}${piece}` };
  // Comments after the last entry stay with it: the new one goes to the end of their line, or of the last of them.
  const after = end + (comma === undefined ? 0 : comma + 1);
  const at = comment ? lineEnd(text, end + rest.lastIndexOf('#')) : after;
  const line = comment ? eol + indent : gap;
  return { at, piece: comma === undefined ? `${line}, ${piece}` : `${line}${piece},` };
}

/** Offset of a comma that is not part of a comment. */
function commaIn(rest: string): number | undefined {
  const bare = rest.replace(/#[^\n]*/g, (comment) => ' '.repeat(comment.length));
  const at = bare.indexOf(',');
  return at === -1 ? undefined : at;
}

function newSection(text: string, root: YAMLMap, section: string, entry: NewEntry, eol: string): Insertion {
  const end = deepEnd(root);
  const marker = /^(?:\.\.\.|---)(?=\s|$)/m.exec(text.slice(end));
  const at = marker === null ? text.length : end + marker.index;
  const indent = ' '.repeat(indentOf(root));
  const body = `${indent}${section}:${eol}${blockEntry(entry, `${indent}  `, 'flow', eol)}`;
  const ended = at === 0 || text[at - 1] === '\n';
  // A blank line would become part of a block of text that keeps its line ends.
  const blank = endsInBlockText(root) ? '' : eol;
  if (ended) return { at, piece: `${blank}${body}${eol}` };
  return { at, piece: `${eol}${blank}${body}` };
}

function indentOf(value: YAMLMap | YAMLSeq): number {
  const token = value.srcToken;
  return token !== undefined && 'indent' in token ? token.indent : 0;
}

function startOf(item: unknown): number {
  const node = isPair(item) ? item.key : item;
  return (node as Node | null | undefined)?.range?.[0] ?? 0;
}

/** The end of the last thing written in a node, comments and blank lines after it not counted. */
function deepEnd(item: unknown): number {
  if (isPair(item)) {
    const value = item.value as Node | null;
    return Math.max(deepEnd(item.key), value === null ? 0 : deepEnd(value));
  }
  if (isCollection(item) && !item.flow) return deepEnd(item.items.at(-1));
  if (isAlias(item) || isScalar(item) || isCollection(item)) return item.range?.[1] ?? 0;
  return 0;
}

function endsInBlockText(item: unknown): boolean {
  if (isPair(item)) return endsInBlockText(item.value);
  if (isCollection(item)) return !item.flow && endsInBlockText(item.items.at(-1));
  return isScalar(item) && (item.type === Scalar.BLOCK_LITERAL || item.type === Scalar.BLOCK_FOLDED);
}

/** Where the line ends that holds this offset: before its CR or LF. */
function lineEnd(text: string, from: number): number {
  const lf = text.indexOf('\n', from);
  if (lf === -1) return text.length;
  return text[lf - 1] === '\r' ? lf - 1 : lf;
}
