/**
 * Reads the markup that templates produce into elements, strictly: every tag closed, every attribute
 * quoted, five named references and numbered ones, comments, nothing else. What an element means is
 * {@link ./read-content.ts}'s matter.
 *
 * A template is rendered with the place of each tag written into it ({@link markPlaces}), so that an
 * error names the file and line of the template, even inside a partial or a loop.
 */
import { Refusal } from '../../findings/refusal.ts';

export interface At {
  readonly file: string;
  readonly line: number;
}

export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly (Element | string)[];
  readonly at: At;
}

/** An element that is not closed yet. */
interface Open extends Element {
  readonly children: (Element | string)[];
  /** Where it begins in the text. */
  readonly begin: number;
  /** The text up to the next closing tag of its name, by which it is known again if that tag is its own. */
  readonly raw: string | undefined;
}

/** The same text read twice is one element, of these that templates repeat. Their places are those of the template. */
const repeated = new Set(['back', 'p', 'table']);

const references: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** A control character, which {@link withoutControls} takes out of every value, so that no value can forge a place. */
const fence = '\u0001';

/** The source of a template with file and line written behind the name of each opening tag. */
export function markPlaces(file: string, source: string): string {
  return source
    .split('\n')
    .map((text, index) => text.replace(/<([a-z][a-z0-9-]*)/g, `<$1${fence}${file}:${index + 1}${fence}`))
    .join('\n');
}

/** A refusal that names the line of the template, or of the markup where it did not come from a template. */
export function refuseMarkup(at: At, sentence: string): Refusal {
  return new Refusal(
    `${at.file}:${at.line}: ${sentence}`,
    'The elements are listed in src/documents/print/README.md.',
  );
}

/** @throws Refusal with file and line, on anything that is not well formed */
export function parseMarkup(text: string, file = 'markup'): Element {
  let position = 0;
  let line = 1;
  let counted = 0;
  const open: Open[] = [];
  const read = new Map<string, Element>();
  let root: Element | undefined;

  const here = (): At => {
    for (let at = text.indexOf('\n', counted); at >= 0 && at < position; at = text.indexOf('\n', at + 1))
      line += 1;
    counted = position;
    return { file, line };
  };
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    pattern.lastIndex = position;
    const found = pattern.exec(text);
    if (found === null) return undefined;
    position = pattern.lastIndex;
    return found;
  };
  const nearest = (): At => open.at(-1)?.at ?? here();

  while (position < text.length) {
    const begin = position;
    const next = text.indexOf('<', position);
    if (next !== position) {
      position = next < 0 ? text.length : next;
      const parent = open.at(-1);
      const plain = dereference(text.slice(begin, position), nearest());
      if (parent !== undefined) parent.children.push(plain);
      else if (plain.trim() !== '')
        throw refuseMarkup(here(), `The text "${excerpt(plain)}" stands outside the document.`);
      continue;
    }
    if (take(/<!--[\s\S]*?-->/y) !== undefined) continue;
    const closing = take(/<\/([a-z][a-z0-9-]*)\s*>/y);
    if (closing !== undefined) {
      const element = open.pop();
      if (element === undefined)
        throw refuseMarkup(here(), `</${closing[1]}> closes an element that was never opened.`);
      if (element.name !== closing[1])
        throw refuseMarkup(element.at, `<${element.name}> is not closed before </${closing[1]}>.`);
      if (element.raw !== undefined && position - element.begin === element.raw.length)
        read.set(element.raw, element);
      const parent = open.at(-1);
      if (parent !== undefined) parent.children.push(element);
      else root = element;
      continue;
    }
    const opening = take(/<([a-z][a-z0-9-]*)(?:\u0001([^\u0001]*):(\d+)\u0001)?/y);
    if (opening === undefined)
      throw refuseMarkup(
        nearest(),
        `"${excerpt(text.slice(position))}" is no tag; a plain < is written &lt;.`,
      );
    const name = opening[1] ?? '';
    const at: At = opening[2] === undefined ? here() : { file: opening[2], line: Number(opening[3]) };
    if (open.length === 0 && root !== undefined)
      throw refuseMarkup(at, `<${name}> stands behind the end of <${root.name}>.`);
    // What cards have in common stands in the markup again and again; it is read once.
    let raw: string | undefined;
    if (repeated.has(name) && opening[2] !== undefined) {
      const close = `</${name}>`;
      const end = text.indexOf(close, position) + close.length;
      if (end >= position) raw = text.slice(begin, end);
      const known = raw === undefined ? undefined : read.get(raw);
      const parent = open.at(-1);
      if (known !== undefined && parent !== undefined) {
        parent.children.push(known);
        position = end;
        continue;
      }
    }
    if (open.length >= 64) throw refuseMarkup(at, `<${name}> lies more than 64 elements deep.`);
    const attributes = new Map<string, string>();
    for (;;) {
      const attribute = take(/\s+([a-z][a-z0-9-]*)\s*=\s*"([^"<]*)"/y);
      if (attribute === undefined) break;
      const key = attribute[1] ?? '';
      if (attributes.has(key)) throw refuseMarkup(at, `<${name}> has the attribute ${key} twice.`);
      attributes.set(key, dereference(attribute[2] ?? '', at));
    }
    const end = take(/\s*(\/?)>/y);
    if (end === undefined)
      throw refuseMarkup(
        at,
        `<${name}> goes on with "${excerpt(text.slice(position))}"; attributes are written name="value".`,
      );
    const element: Open = { name, attributes, children: [], at, begin, raw };
    if (end[1] !== '/') open.push(element);
    else if (open.length > 0) open.at(-1)?.children.push(element);
    else root = element;
  }
  const unclosed = open.at(-1);
  if (unclosed !== undefined) throw refuseMarkup(unclosed.at, `<${unclosed.name}> is never closed.`);
  if (root === undefined) throw refuseMarkup(here(), 'There is no document.');
  return root;
}

function dereference(text: string, at: At): string {
  if (!text.includes('&')) return text;
  return text.replace(/&(?:#x([0-9a-fA-F]{1,6})|#(\d{1,7})|([a-z]+));|&/g, (whole, hex, decimal, name) => {
    if (name !== undefined && Object.hasOwn(references, name)) return references[name] ?? '';
    const code =
      hex !== undefined ? Number.parseInt(hex, 16) : decimal !== undefined ? Number(decimal) : Number.NaN;
    if (Number.isInteger(code) && code >= 32 && code <= 0x10ffff) return String.fromCodePoint(code);
    throw refuseMarkup(at, `"${whole}" is no reference; a plain & is written &amp;.`);
  });
}

function excerpt(text: string): string {
  const plain = text.replace(/\u0001[^\u0001]*\u0001?/g, '').trim();
  return plain.length > 30 ? `${plain.slice(0, 30)}…` : plain;
}
