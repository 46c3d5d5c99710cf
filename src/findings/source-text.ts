/**
 * A text that findings point into, and where in it something stands. Offsets and columns are UTF-16 units, as
 * JavaScript, YAML parsers and editors count them; how wide a character is on the screen matters only when a
 * caret is drawn.
 */
import type { Place } from './finding.ts';

/** Holds the table of where lines begin, so that the text is searched for line ends once only. */
export class SourceText {
  /** As the user named it; `-` for standard input. */
  readonly file: string;
  readonly text: string;
  readonly #lineStarts: readonly number[];

  /** Lines end at LF, whether or not CR stands before it. */
  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
    const lineStarts = [0];
    for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lineStarts.push(at + 1);
    this.#lineStarts = lineStarts;
  }

  /** The text of a line, counted from 1, without its ending; empty for a line that does not exist. */
  lineAt(line: number): string {
    const start = this.#lineStarts[line - 1];
    if (start === undefined) return '';
    const next = this.#lineStarts[line];
    return this.text.slice(start, next === undefined ? undefined : next - 1).replace(/\r$/, '');
  }

  /** The place of a stretch of text, its end exclusive. Offsets beyond the text are drawn back to its end. */
  placeAt(offset: number, endOffset: number = offset): Place {
    const start = this.#position(offset);
    const end = this.#position(Math.max(offset, endOffset));
    const { file } = this;
    return { file, line: start.line, column: start.column, endLine: end.line, endColumn: end.column };
  }

  #position(offset: number): { line: number; column: number } {
    const within = Math.min(Math.max(0, offset), this.text.length);
    let low = 0;
    let high = this.#lineStarts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.#lineStarts[middle] ?? 0) <= within) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: within - (this.#lineStarts[low] ?? 0) + 1 };
  }
}
