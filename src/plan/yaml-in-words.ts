/** What YAML's parser complains of, in a coordinator's words and at the place where the slip was made. */
import type { YAMLError } from 'yaml';

export interface YamlComplaint {
  readonly message: string;
  readonly suggestion?: string;
  readonly from: number;
  readonly to: number;
}

/** Complaints that a broken structure brings about on lines where nothing is wrong. */
const ofStructure: ReadonlySet<string> = new Set([
  'BAD_INDENT',
  'BLOCK_AS_IMPLICIT_KEY',
  'MULTILINE_IMPLICIT_KEY',
  'UNEXPECTED_TOKEN',
]);

/**
 * One slip makes the parser stumble on for many lines. Of complaints about lines that follow one another only
 * the first is kept, and of complaints about the structure of a section only its first; a line indented with
 * a tab is always said.
 */
export function yamlInWords(errors: readonly YAMLError[], text: string): YamlComplaint[] {
  const kept: YamlComplaint[] = [];
  let last = { line: Number.NEGATIVE_INFINITY, brokenSection: Number.NEGATIVE_INFINITY };
  const complaints = errors
    .map((error) => ({ ...inWords(error, text), code: error.code }))
    .sort((a, b) => a.from - b.from);
  const lines = text.split('\n');
  let [line, section, start] = [0, 0, 0];
  for (const { code, ...complaint } of complaints) {
    for (; start + (lines[line] ?? '').length < complaint.from && line < lines.length - 1; line += 1) {
      start += (lines[line] ?? '').length + 1;
      if (/^[a-z]/.test(lines[line + 1] ?? '')) section += 1;
    }
    const structure = ofStructure.has(code);
    const heading = /^[a-z]/.test(lines[line] ?? '');
    const echo =
      line === last.line + 1 ||
      (structure && (section === last.brokenSection || (heading && section === last.brokenSection + 1)));
    if (line !== last.line && (!echo || isIndentedWithTab(text, complaint.from))) kept.push(complaint);
    last = {
      line,
      brokenSection: structure || isIndentedWithTab(text, complaint.from) ? section : last.brokenSection,
    };
  }
  return kept;
}

const quoteIt = 'quote the text: "…: …"';
const secondColon = 'A second colon on one line: text that holds a colon and a space needs quotes.';

function inWords(error: YAMLError, text: string): YamlComplaint {
  const from = Math.min(error.pos[0], text.length);
  const place = { from, to: Math.max(Math.min(error.pos[1], endOfLine(text, from)), from + 1) };
  const line = text.slice(startOfLine(text, from), endOfLine(text, from));
  if (isIndentedWithTab(text, from)) {
    const start = startOfLine(text, from);
    const blank = /^\s*/.exec(line)?.[0].length ?? 0;
    return {
      message: 'This line is indented with a tab; YAML takes only spaces.',
      suggestion: 'two spaces for each level',
      from: start + line.indexOf('\t'),
      to: start + blank,
    };
  }
  switch (error.code) {
    case 'BAD_INDENT':
      return (
        cutOffAbove(text, from) ?? {
          ...place,
          message: 'This line is indented differently from the lines it belongs with.',
        }
      );
    case 'BLOCK_IN_FLOW':
      return { ...place, message: secondColon, suggestion: quoteIt };
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
    case 'MISSING_CHAR': {
      const joined = /^\s*([a-z0-9][a-z0-9-]*):([^\s:].*?)\s*$/.exec(line);
      if (joined) {
        const message =
          'A colon without a space after it is part of the word, so this line is no `key: value`.';
        return { ...place, message, suggestion: `${joined[1]}: ${joined[2]}` };
      }
      const below = deeperLineBelow(text, from);
      if (error.code !== 'MISSING_CHAR' && below !== undefined && line.split(/:\s/).length === 2) {
        const message =
          'This line is indented deeper than the one above it, which has its value already, so YAML reads it as more of that value.';
        return { ...below, message, suggestion: 'the same indentation as the line above' };
      }
      if (error.code === 'BLOCK_AS_IMPLICIT_KEY')
        return { ...place, message: secondColon, suggestion: quoteIt };
      if (error.code === 'MULTILINE_IMPLICIT_KEY')
        return { ...place, message: 'This line is no `key: value`; a colon and a space are missing.' };
      return {
        ...place,
        message: `Something is not closed before this point: ${firstSentence(error.message)}`,
      };
    }
    case 'TAG_RESOLVE_FAILED':
      return { ...place, message: tagNotKnown };
    default:
      if (/(?:^|[:,[{-]\s+)\*/.test(line.slice(0, from - startOfLine(text, from) + 1)))
        return { ...place, message: noSuchAnchor };
      return { ...place, message: `This is not YAML: ${firstSentence(error.message)}` };
  }
}

export const tagNotKnown =
  'A `!` begins a YAML tag, and plans have none; text that begins with `!` needs quotes.';
export const noSuchAnchor =
  'A `*` begins a reference to an anchor, and there is no such anchor before it; text that begins with `*` needs quotes.';

/** The next line with text on it, where that is indented deeper than the line at an offset. */
function deeperLineBelow(text: string, offset: number): { from: number; to: number } | undefined {
  const indentOf = (start: number) => /^ */.exec(text.slice(start, endOfLine(text, start)))?.[0].length ?? 0;
  const here = indentOf(startOfLine(text, offset));
  let start = endOfLine(text, offset) + 1;
  while (start < text.length && text.slice(start, endOfLine(text, start)).trim() === '')
    start = endOfLine(text, start) + 1;
  const indent = indentOf(start);
  if (start >= text.length || indent <= here) return undefined;
  return { from: start + indent, to: start + text.slice(start, endOfLine(text, start)).trimEnd().length };
}

function isIndentedWithTab(text: string, offset: number): boolean {
  return /^ *\t\s*[^\s#]/.test(text.slice(startOfLine(text, offset), endOfLine(text, offset)));
}

/** A number sign on the last line written above, where it hides the bracket that would close an entry. */
function cutOffAbove(text: string, offset: number): YamlComplaint | undefined {
  const written = text.slice(0, startOfLine(text, offset)).trimEnd().length;
  const start = startOfLine(text, written);
  const above = text.slice(start, endOfLine(text, start));
  const sign = /\s#(?=\S)/.exec(above);
  if (sign === null) return undefined;
  const open = (part: string) => (part.match(/[{[]/g)?.length ?? 0) - (part.match(/[}\]]/g)?.length ?? 0);
  const hides = open(above.slice(0, sign.index)) > 0 && open(above.slice(sign.index)) < 0;
  return hides
    ? {
        message:
          'A number sign after a space begins a comment, which hides the bracket at the end of this line: text with one needs quotes.',
        from: start + sign.index + 1,
        to: start + above.trimEnd().length,
      }
    : undefined;
}

function startOfLine(text: string, offset: number): number {
  return offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
}

function endOfLine(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end === -1 ? text.length : end;
}

function firstSentence(message: string): string {
  const line = message.split('\n')[0] ?? message;
  return line
    .replace(/ at line \d+, column \d+:?$/, '')
    .replace(/(\S)(["'])quote$/, '$1 $2 quote')
    .replace(/Missing closing (["'])quote/, 'the closing quote $1 is missing')
    .replace(/[.:]?$/, '.');
}
