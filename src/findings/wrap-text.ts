/** Breaking sentences into lines of at most so many columns on a screen. */
import type { DisplayWidth } from './display-width.ts';

/** Breaks at spaces; a word wider than the line stays whole, because half a path or address is of no use. */
export function wrapText(text: string, width: number, widthOf: DisplayWidth): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let used = 0;
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const wide = widthOf(word);
    if (line !== '' && used + 1 + wide > width) {
      lines.push(line);
      line = '';
      used = 0;
    }
    used += wide + (line === '' ? 0 : 1);
    line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}
