/** What an insertion changes in a file, as lines with + and - and a little of what stands around them. */
import type { Palette } from '../findings/print-findings.ts';
import { visibleText } from '../findings/visible-text.ts';
import { type Insertion, inserted } from '../plan/append-entry.ts';

export function insertionDiff(path: string, text: string, insertion: Insertion, palette: Palette): string {
  const before = text.split('\n');
  const after = inserted(text, insertion).split('\n');
  let first = 0;
  while (first < before.length && before[first] === after[first]) first += 1;
  let last = 0;
  while (last < before.length - first && before.at(-1 - last) === after.at(-1 - last)) last += 1;
  const show = (lines: readonly string[], sign: string) =>
    lines.map((line) => `${sign}${visibleText(line.replace(/\r$/, ''))}`);
  const lines = [
    palette.faint(`${path}, line ${first + 1}:`),
    ...show(before.slice(Math.max(0, first - 2), first), ' '),
    ...show(before.slice(first, before.length - last), '-').map(palette.error),
    ...show(after.slice(first, after.length - last), '+').map(palette.strong),
    ...show(after.slice(after.length - last, after.length - last + 1), ' ').filter((line) => line !== ' '),
  ];
  return `${lines.join('\n')}\n`;
}
