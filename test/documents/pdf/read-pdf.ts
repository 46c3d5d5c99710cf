/**
 * A PDF as qpdf reads it (its JSON, version 2): a parser that shares nothing with what wrote the file. Objects stay
 * what they are in the file, references too, and can be spoilt to see whether a check notices.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const canReadPdf = spawnSync('qpdf', ['--version']).error === undefined;
if (!canReadPdf && process.env['CI'] !== undefined) throw new Error('qpdf is missing: apt-get install qpdf');

export type Value = null | boolean | number | string | Value[] | Dictionary;
export type Dictionary = { [key: string]: Value };

interface StreamObject {
  readonly dict: Dictionary;
  /** Decoded. */
  data: string;
}

export interface Pdf {
  readonly version: string;
  readonly trailer: Dictionary;
  readonly values: Map<string, Value>;
  readonly streams: Map<string, StreamObject>;
}

export function readPdf(bytes: Uint8Array): Pdf {
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  let out: string;
  try {
    const file = join(folder, 'in.pdf');
    writeFileSync(file, bytes);
    const asked = ['--json=2', '--json-stream-data=inline', '--decode-level=generalized', file];
    out = execFileSync('qpdf', asked, { maxBuffer: 256 * 1024 * 1024, encoding: 'utf8' });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  const {
    qpdf: [head, objects],
  } = JSON.parse(out) as {
    qpdf: [
      { pdfversion: string },
      { [key: string]: { value?: Value; stream?: { dict: Dictionary; data: string } } },
    ];
  };
  const values = new Map<string, Value>();
  const streams = new Map<string, StreamObject>();
  for (const [key, { value, stream }] of Object.entries(objects)) {
    const name = key.replace(/^obj:/, '');
    if (stream !== undefined)
      streams.set(name, { dict: stream.dict, data: Buffer.from(stream.data, 'base64').toString('latin1') });
    else values.set(name, value ?? null);
  }
  const trailer = dictionary(values.get('trailer'));
  values.delete('trailer');
  return { version: head.pdfversion, trailer, values, streams };
}

/** What a reference leads to; anything else as it is. A stream is its dictionary. */
export function follow(pdf: Pdf, value: Value | undefined): Value {
  if (typeof value !== 'string' || !/^\d+ \d+ R$/.test(value)) return value ?? null;
  return pdf.values.get(value) ?? pdf.streams.get(value)?.dict ?? null;
}

export function dictionary(value: Value | undefined): Dictionary {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? value : {};
}

export function list(value: Value | undefined): Value[] {
  return value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];
}

export function inside(pdf: Pdf, value: Value | undefined, ...keys: readonly string[]): Value {
  return keys.reduce<Value>((at, key) => follow(pdf, dictionary(at)[key]), follow(pdf, value));
}

/** A text string without the mark that says how it was written. */
export function words(value: Value | undefined): string {
  return typeof value === 'string' ? value.replace(/^u:/, '') : '';
}

export function catalog(pdf: Pdf): Dictionary {
  return dictionary(inside(pdf, pdf.trailer['/Root']));
}

export interface PdfPage {
  readonly reference: string;
  readonly dictionary: Dictionary;
}

export function pagesOf(pdf: Pdf): readonly PdfPage[] {
  const walk = (reference: Value): PdfPage[] => {
    const node = dictionary(follow(pdf, reference));
    return node['/Type'] === '/Pages'
      ? list(follow(pdf, node['/Kids'])).flatMap(walk)
      : [{ reference: String(reference), dictionary: node }];
  };
  return walk(catalog(pdf)['/Pages'] ?? null);
}

export interface Part {
  readonly reference: string;
  readonly dictionary: Dictionary;
  readonly role: string;
  readonly parent: Part | undefined;
  readonly parts: Part[];
  /** Marked content by page. */
  readonly marks: { readonly page: string; readonly mcid: number }[];
}

/** The structure tree below its root, in reading order. */
export function structureOf(pdf: Pdf): readonly Part[] {
  const all: Part[] = [];
  const visit = (reference: Value, parent: Part | undefined): void => {
    const node = dictionary(follow(pdf, reference));
    const part: Part = {
      reference: String(reference),
      dictionary: node,
      role: String(node['/S']).slice(1),
      parent,
      parts: [],
      marks: [],
    };
    all.push(part);
    parent?.parts.push(part);
    for (const kid of list(follow(pdf, node['/K']))) {
      const content = dictionary(follow(pdf, kid));
      if (typeof kid === 'number') part.marks.push({ page: String(node['/Pg']), mcid: kid });
      else if (content['/Type'] === '/MCR' || content['/MCID'] !== undefined)
        part.marks.push({ page: String(content['/Pg'] ?? node['/Pg']), mcid: Number(content['/MCID']) });
      else visit(kid, part);
    }
  };
  for (const kid of list(inside(pdf, catalog(pdf)['/StructTreeRoot'], '/K'))) visit(kid, undefined);
  return all;
}

export interface Painted {
  /** What it stands in, the outermost first. */
  readonly marked: readonly Marking[];
  readonly operator: string;
}

export interface Marking {
  readonly tag: string;
  readonly mcid?: number;
  readonly type?: string;
  readonly subtype?: string;
}

export interface Drawn {
  readonly painted: readonly Painted[];
  readonly markings: readonly { readonly marking: Marking; readonly within: readonly Marking[] }[];
  readonly operators: ReadonlySet<string>;
  /** Greatest depth of `q`; -1 where `q` and `Q`, or marks and their ends, do not pair. */
  readonly depth: number;
  /** Codes of two bytes shown, by the name of the font. */
  readonly shown: ReadonlyMap<string, ReadonlySet<number>>;
}

const token = /<<|>>|\[|\]|<[0-9A-Fa-f\s]*>|\((?:\\.|[^\\()])*\)|\/[^\s<>[\]()/%]+|[^\s<>[\]()/%]+/g;
const painting = new Set('S s f F f* B B* b b* Tj TJ \' " Do sh EI'.split(' '));

/** What the content of a page paints, and what each piece of it belongs to. */
export function drawnOn(pdf: Pdf, page: PdfPage): Drawn {
  const content = list(page.dictionary['/Contents'])
    .map((reference) => pdf.streams.get(String(reference))?.data ?? '')
    .join('\n');
  const open: Marking[] = [];
  const painted: Painted[] = [];
  const markings: { marking: Marking; within: readonly Marking[] }[] = [];
  const operators = new Set<string>();
  const shown = new Map<string, Set<number>>();
  let operands: string[] = [];
  let [depth, deepest, font, odd] = [0, 0, '', false];
  for (const [each] of content.matchAll(token)) {
    if (/^[<>[\](/]|^[-+.\d]/.test(each)) {
      operands.push(each);
      continue;
    }
    operators.add(each);
    if (each === 'BDC' || each === 'BMC') {
      const text = operands.join(' ');
      const marking: Marking = {
        tag: (operands[0] ?? '').slice(1),
        ...(/\/MCID (\d+)/.test(text) && { mcid: Number(/\/MCID (\d+)/.exec(text)?.[1]) }),
        ...(/\/Type \/(\w+)/.test(text) && { type: /\/Type \/(\w+)/.exec(text)?.[1] ?? '' }),
        ...(/\/Subtype \/(\w+)/.test(text) && { subtype: /\/Subtype \/(\w+)/.exec(text)?.[1] ?? '' }),
      };
      markings.push({ marking, within: [...open] });
      open.push(marking);
    }
    if (each === 'EMC') odd ||= open.pop() === undefined;
    else if (each === 'q' || each === 'Q') {
      depth += each === 'q' ? 1 : -1;
      deepest = Math.max(deepest, depth);
      odd ||= depth < 0;
    } else if (each === 'Tf') font = operands.at(-2)?.slice(1) ?? '';
    if (each === 'Tj' || each === 'TJ') {
      const codes = shown.get(font) ?? new Set<number>();
      for (const text of operands.filter((one) => /^<[^<]/.test(one)))
        for (const [code] of text.slice(1, -1).matchAll(/..../g)) codes.add(Number.parseInt(code, 16));
      shown.set(font, codes);
    }
    if (painting.has(each)) painted.push({ marked: [...open], operator: each });
    operands = [];
  }
  return { painted, markings, operators, depth: odd || depth !== 0 || open.length > 0 ? -1 : deepest, shown };
}
