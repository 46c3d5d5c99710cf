/**
 * The plain part of YAML, read straight through: mappings and lists by indentation, scalars and brackets that
 * begin and end on one line. That is nearly every plan, and it is read many times faster than by a parser of the
 * whole language.
 *
 * Whatever is beyond that, or could mean two things, is left alone: anchors, tags, escapes, text over several
 * lines, tabs, a key written twice, anything wrong. Where this gives a tree it gives the very one the whole
 * parser would; a test holds it to that.
 */
import type { PlanPath } from '../findings/finding.ts';
import type { YamlTree } from './read-yaml.ts';

/** Where a value stands. What is in brackets keeps no places of what it holds: they are few that are ever asked for. */
interface Node {
  readonly from: number;
  readonly to: number;
  readonly value: unknown;
  readonly entries?: ReadonlyMap<string, Entry>;
  readonly items?: readonly Node[];
}

interface Entry {
  readonly from: number;
  readonly to: number;
  readonly node: Node;
}

interface Line {
  /** Offset and column of the first thing on it that is neither space nor the mark of a list. */
  start: number;
  column: number;
  readonly end: number;
}

/** Thrown to leave the text to the whole parser; never seen outside. */
class NotPlain extends Error {}

const deepest = 24;
const strange = /[^\n\x20-\x7e\xa1-\ud7ff\ue000-\ufefe]|[\u2028\u2029]/;
const key = /([A-Za-z0-9][A-Za-z0-9_.-]{0,63}):(?= |$)/my;
const plainStart = /[\p{L}\p{N}_(/+.$]|-[\p{L}\p{N}.]/uy;
/** What plain text in brackets ends at. */
const inBracketsText = /[^,[\]{}\n]*/y;
const number = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;

/** Undefined where the text is more than plain. */
export function readPlainYaml(text: string): YamlTree | undefined {
  if (strange.test(text)) return undefined;
  try {
    const lines = linesOf(text);
    const [first] = lines;
    if (first?.column !== 0) return undefined;
    const [root, next] = block(text, lines, 0, 0);
    if (next !== lines.length) return undefined;
    return { root: root.value, problems: [], locate: locator(text, root) };
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}

/** Lines that hold more than a comment. */
function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  for (let at = 0; at < text.length; ) {
    const newline = text.indexOf('\n', at);
    const end = newline === -1 ? text.length : newline;
    let start = at;
    while (start < end && text.charCodeAt(start) === 32) start += 1;
    if (start < end && text[start] !== '#') lines.push({ start, column: start - at, end });
    at = end + 1;
  }
  return lines;
}

/** What begins at a line, by its column, and the line after it. */
function block(text: string, lines: Line[], index: number, depth: number): readonly [Node, number] {
  const line = lines[index];
  if (!line || depth > deepest) throw new NotPlain();
  return isListMark(text, line) ? list(text, lines, index, depth) : mapping(text, lines, index, depth);
}

function isListMark(text: string, line: Line): boolean {
  return text[line.start] === '-' && text[line.start + 1] === ' ';
}

function mapping(text: string, lines: Line[], index: number, depth: number): readonly [Node, number] {
  const { column, start } = lines[index] ?? { column: 0, start: 0 };
  const entries = new Map<string, Entry>();
  const value: Record<string, unknown> = {};
  let at = index;
  let to = start;
  for (let line = lines[at]; line && line.column === column; line = lines[at]) {
    key.lastIndex = line.start;
    const name = key.exec(text)?.[1];
    if (name === undefined || entries.has(name) || isListMark(text, line)) throw new NotPlain();
    const [from, end] = [line.start, line.start + name.length];
    const valueAt = skipSpaces(text, end + 1, line.end);
    let node: Node;
    if (valueAt === line.end || text[valueAt] === '#') {
      if (text[valueAt] === '#' && valueAt === end + 1) throw new NotPlain();
      const below = lines[at + 1];
      if (below && (below.column > column || (below.column === column && isListMark(text, below))))
        [node, at] = block(text, lines, at + 1, depth + 1);
      else [node, at] = [{ from: end + 1, to: end + 1, value: null }, at + 1];
    } else {
      node = lineValue(text, valueAt, line.end);
      at += 1;
      leaveFolded(lines[at], column);
    }
    entries.set(name, { from, to: end, node });
    value[name] = node.value;
    to = Math.max(node.to, end + 1);
  }
  if ((lines[at]?.column ?? 0) > column) throw new NotPlain();
  return [{ from: start, to, value, entries }, at];
}

function list(text: string, lines: Line[], index: number, depth: number): readonly [Node, number] {
  const { column, start } = lines[index] ?? { column: 0, start: 0 };
  const items: Node[] = [];
  let at = index;
  for (let line = lines[at]; line && line.column === column && isListMark(text, line); line = lines[at]) {
    const inner = skipSpaces(text, line.start + 1, line.end);
    if (inner === line.end || text[inner] === '#') throw new NotPlain();
    key.lastIndex = inner;
    if (key.test(text) || (text[inner] === '-' && text[inner + 1] === ' ')) {
      line.column += inner - line.start;
      line.start = inner;
      const [node, next] = block(text, lines, at, depth + 1);
      items.push(node);
      at = next;
    } else {
      items.push(lineValue(text, inner, line.end));
      at += 1;
      leaveFolded(lines[at], column);
    }
  }
  if ((lines[at]?.column ?? 0) > column) throw new NotPlain();
  return [{ from: start, to: items.at(-1)?.to ?? start, value: items.map(({ value }) => value), items }, at];
}

/** Text may go on over the lines below that stand further in. */
function leaveFolded(below: Line | undefined, column: number): void {
  if (below && below.column > column) throw new NotPlain();
}

function skipSpaces(text: string, from: number, end: number): number {
  let at = from;
  while (at < end && text.charCodeAt(at) === 32) at += 1;
  return at;
}

/** A value that fills the rest of a line, but for a comment. */
function lineValue(text: string, from: number, end: number): Node {
  const first = text[from];
  if (first === '{' || first === '[' || first === '"' || first === "'") {
    const node = first === '{' || first === '[' ? brackets(text, from, end, 0) : quoted(text, from, end);
    const after = skipSpaces(text, node.to, end);
    if (after < end && (text[after] !== '#' || after === node.to)) throw new NotPlain();
    return node;
  }
  const rest = text.slice(from, end);
  const comment = rest.indexOf(' #');
  // A figure after the mark looks like text that was meant.
  if (comment !== -1 && /[\d]/.test(rest[comment + 2] ?? '')) throw new NotPlain();
  return plain(text, from, comment === -1 ? end : from + comment);
}

function plain(text: string, from: number, end: number): Node {
  const source = text.slice(from, end).trimEnd();
  plainStart.lastIndex = from;
  if (source === '' || !plainStart.test(text) || /:(?: |$)/.test(source)) throw new NotPlain();
  return { from, to: from + source.length, value: scalar(source) };
}

/** What YAML 1.2 (core schema, 10.3.2) makes of plain text, with the spelling of odd numbers kept. */
function scalar(source: string): unknown {
  if (number.test(source)) {
    const value = Number(source);
    const exact = Number.isFinite(value) && (!Number.isInteger(value) || Number.isSafeInteger(value));
    return exact ? value : source;
  }
  return source.length > 5 || !words.has(source) ? source : words.get(source);
}

const words: ReadonlyMap<string, boolean | null> = new Map([
  ...['true', 'True', 'TRUE'].map((word) => [word, true] as const),
  ...['false', 'False', 'FALSE'].map((word) => [word, false] as const),
  ...['null', 'Null', 'NULL'].map((word) => [word, null] as const),
]);

function quoted(text: string, from: number, end: number): Node {
  const mark = text[from] ?? '';
  const close = text.indexOf(mark, from + 1);
  if (close === -1 || close >= end || text[close + 1] === mark) throw new NotPlain();
  const value = text.slice(from + 1, close);
  if (mark === '"' && value.includes('\\')) throw new NotPlain();
  return { from, to: close + 1, value };
}

/** @param places gathers, where they are wanted, what stands where directly inside */
function brackets(text: string, from: number, end: number, depth: number, places?: Places): Node {
  if (depth > deepest) throw new NotPlain();
  return text[from] === '{'
    ? mappingInBrackets(text, from, end, depth, places)
    : listInBrackets(text, from, end, depth, places);
}

interface Places {
  readonly entries: Map<string, Entry>;
  readonly items: Node[];
}

function mappingInBrackets(text: string, from: number, end: number, depth: number, places?: Places): Node {
  const value: Record<string, unknown> = {};
  let at = skipSpaces(text, from + 1, end);
  while (text[at] !== '}') {
    key.lastIndex = at;
    const name = key.exec(text)?.[1];
    if (name === undefined || Object.hasOwn(value, name)) throw new NotPlain();
    const keyEnd = at + name.length;
    const node = inBrackets(text, skipSpaces(text, keyEnd + 1, end), end, depth);
    places?.entries.set(name, { from: at, to: keyEnd, node });
    value[name] = node.value;
    at = nextInBrackets(text, node.to, end, '}');
  }
  return { from, to: at + 1, value };
}

function listInBrackets(text: string, from: number, end: number, depth: number, places?: Places): Node {
  const value: unknown[] = [];
  let at = skipSpaces(text, from + 1, end);
  while (text[at] !== ']') {
    const node = inBrackets(text, at, end, depth);
    places?.items.push(node);
    value.push(node.value);
    at = nextInBrackets(text, node.to, end, ']');
  }
  return { from, to: at + 1, value };
}

/** Where the next thing begins after one that ends here, or the bracket that closes. */
function nextInBrackets(text: string, from: number, end: number, close: string): number {
  const at = skipSpaces(text, from, end);
  if (at >= end) throw new NotPlain();
  if (text[at] === close) return at;
  if (text[at] !== ',') throw new NotPlain();
  const next = skipSpaces(text, at + 1, end);
  // A comma before the bracket closes nothing here: whether something is missing is for the whole parser to say.
  if (text[next] === close) throw new NotPlain();
  return next;
}

function inBrackets(text: string, from: number, end: number, depth: number): Node {
  const first = text[from];
  if (from >= end) throw new NotPlain();
  if (first === '{' || first === '[') return brackets(text, from, end, depth + 1);
  if (first === '"' || first === "'") return quoted(text, from, end);
  inBracketsText.lastIndex = from;
  inBracketsText.test(text);
  const to = inBracketsText.lastIndex;
  const node = plain(text, from, to);
  if (text.slice(from, to).includes(' #')) throw new NotPlain();
  return node;
}

/** What stands where inside a value: remembered, or read once more where it is in brackets. */
function placesIn(text: string, node: Node): Pick<Node, 'entries' | 'items'> {
  if (node.entries || node.items || (text[node.from] !== '{' && text[node.from] !== '[')) return node;
  const places: Places = { entries: new Map(), items: [] };
  brackets(text, node.from, node.to, 0, places);
  return places;
}

function locator(text: string, root: Node): YamlTree['locate'] {
  return (path: PlanPath, points) => {
    let node: Node = root;
    let here = { from: 0, to: 0 };
    for (const [index, step] of path.entries()) {
      const last = index === path.length - 1;
      const inside = placesIn(text, node);
      const entry = inside.entries?.get(String(step));
      const item = inside.items?.[Number(step)];
      if (entry) {
        const value: Node = entry.node;
        // An entry that stands over many lines is pointed at by its key: a caret under a whole block says little.
        const onOneLine = value.to > value.from && !text.slice(value.from, value.to).includes('\n');
        const { from, to } = last && points === 'value' && onOneLine ? value : entry;
        here = { from, to };
        node = value;
      } else if (item) {
        const lineEnd = text.indexOf('\n', item.from);
        here = { from: item.from, to: lineEnd === -1 ? item.to : Math.min(item.to, lineEnd) };
        node = item;
      } else return { ...here, found: false };
    }
    return { ...here, found: true };
  };
}
