/** What `check --json` prints: a stable shape that other programs may rely on. Keys are added, never renamed. */
import type { AcceptedFinding } from './accepted-finding.ts';
import { countFindings } from './count-findings.ts';
import { compareFindings, type Finding, pathText, type Severity, type Source } from './finding.ts';

/** What is known of one plan when its findings are listed. A plan that could not be read has no revision and no check. */
export interface CheckedPlan {
  readonly plan: string;
  readonly revision: number | null;
  readonly check: string | null;
  readonly findings: readonly Finding[];
  /** What the group has looked at and keeps. */
  readonly accepted: readonly AcceptedFinding[];
  /** Why the file could not be read at all. */
  readonly unread?: string;
}

export interface FindingJson {
  readonly rule: string;
  readonly severity: Severity;
  readonly basis: string;
  readonly message: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly path: string;
  readonly source: Source | null;
  readonly suggestion?: string;
}

export interface AcceptedFindingJson extends FindingJson {
  readonly because: string;
  readonly until: string;
}

export interface CheckedPlanJson {
  readonly plan: string;
  readonly revision: number | null;
  readonly check: string | null;
  readonly findings: readonly FindingJson[];
  readonly counts: Readonly<Record<Severity, number>>;
  readonly accepted: readonly AcceptedFindingJson[];
  readonly unread?: string;
}

/**
 * One plan is an object of its own; several stand in a list under `plans`. Ready for `JSON.stringify`.
 * @param isListed which findings are listed; all are counted
 */
export function findingsJson(
  plans: readonly CheckedPlan[],
  isListed: (finding: Finding) => boolean = () => true,
): CheckedPlanJson | { readonly plans: readonly CheckedPlanJson[] } {
  const listed = plans.map((plan) => checkedPlanJson(plan, isListed));
  const [first, ...others] = listed;
  return first !== undefined && others.length === 0 ? first : { plans: listed };
}

function checkedPlanJson(checked: CheckedPlan, isListed: (finding: Finding) => boolean): CheckedPlanJson {
  const { plan, revision, check, findings, accepted, unread } = checked;
  return {
    plan,
    revision,
    check,
    findings: findings.filter(isListed).sort(compareFindings).map(findingJson),
    counts: countFindings(findings),
    accepted: accepted
      .filter(({ finding }) => isListed(finding))
      .sort((a, b) => compareFindings(a.finding, b.finding))
      .map(({ finding, because, until }) => ({ ...findingJson(finding), because, until })),
    ...(unread === undefined ? {} : { unread }),
  };
}

function findingJson(finding: Finding): FindingJson {
  const { rule, severity, basis, message, place, path, source, suggestion } = finding;
  return {
    rule,
    severity,
    basis,
    message,
    file: place.file,
    line: place.line,
    column: place.column,
    path: pathText(path),
    source: source ?? null,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}
