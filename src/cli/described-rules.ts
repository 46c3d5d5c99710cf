/** Rules and the findings of loading, as `explain` and SARIF describe them. */
import { allRules } from '../checks/all-rules.ts';
import type { Severity } from '../findings/finding.ts';
import { languageFindings } from '../plan/language-findings.ts';

export interface DescribedRule {
  readonly id: string;
  readonly severity: Severity;
  readonly looksFor: string;
  readonly why: string;
  readonly mend: string;
}

export const describedRules: readonly DescribedRule[] = [
  ...languageFindings.map((finding) => ({ ...finding, severity: 'error' as const })),
  ...allRules,
].toSorted((a, b) => (a.id < b.id ? -1 : 1));
