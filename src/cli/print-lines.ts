/** Lines of a command's text for people: hanging paragraphs and rows whose last column may run over. */
import type { DisplayWidth } from '../findings/display-width.ts';
import { visibleText } from '../findings/visible-text.ts';
import { wrapText } from '../findings/wrap-text.ts';

export interface Lines {
  /** A paragraph: the first line indented by `indent`, what runs over by `hang`. */
  say(text: string, indent?: number, hang?: number): string;
  /** Columns padded to their widths, at least one, the last one wrapped below itself. */
  row(cells: readonly string[], widths: readonly number[]): string;
}

export function lines(columns: number, widthOf: DisplayWidth): Lines {
  // A cell wider than its column keeps a space before the next.
  const pad = (text: string, width: number) => text + ' '.repeat(Math.max(1, width - widthOf(text)));
  const hung = (text: string, first: string, next: string) =>
    wrapText(visibleText(text), columns - Math.max(first.length, next.length), widthOf)
      .map((line, index) => `${index === 0 ? first : next}${line}`)
      .join('\n');
  return {
    say: (text, indent = 0, hang = indent) => hung(text, ' '.repeat(indent), ' '.repeat(hang)),
    row: (cells, widths) => {
      const fixed = cells.slice(0, -1).map((cell, index) => pad(visibleText(cell), widths[index] ?? 0));
      const head = fixed.join('');
      const last = wrapText(visibleText(cells.at(-1) ?? ''), Math.max(20, columns - widthOf(head)), widthOf);
      const below = ' '.repeat(widthOf(head));
      return last.length === 0
        ? head.trimEnd()
        : last.map((line, index) => `${index === 0 ? head : below}${line}`).join('\n');
    },
  };
}
