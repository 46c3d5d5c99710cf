/** How many findings there are of each severity. */
import type { Finding, Severity } from './finding.ts';

export function countFindings(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const counts = { error: 0, warning: 0, note: 0 };
  for (const finding of findings) counts[finding.severity] += 1;
  return counts;
}

/** In words: `2 errors, 1 warning, no notes`. */
export function countsText(counts: Readonly<Record<Severity, number>>): string {
  const word = (count: number, one: string) =>
    `${count === 0 ? 'no' : count} ${one}${count === 1 ? '' : 's'}`;
  return `${word(counts.error, 'error')}, ${word(counts.warning, 'warning')}, ${word(counts.note, 'note')}`;
}
