/** What `check --json` prints: a stable shape that other programs may rely on. Keys are added, never renamed. */
import { countFindings } from './count-findings.ts';
import { compareFindings, type Finding, pathText, type Severity, type Source } from './finding.ts';

/** What is known of one plan when its findings are listed. A plan that could not be read has no revision and no check. */
export interface CheckedPlan {
  readonly plan: string;
  readonly revision: number | null;
  readonly check: string | null;
  readonly findings: readonly Finding[];
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

export interface CheckedPlanJson {
  readonly plan: string;
  readonly revision: number | null;
  readonly check: string | null;
  readonly findings: readonly FindingJson[];
  readonly counts: Readonly<Record<Severity, number>>;
}

/** One plan is an object of its own; several stand in a list under `plans`. Ready for `JSON.stringify`. */
export function findingsJson(
  plans: readonly CheckedPlan[],
): CheckedPlanJson | { readonly plans: readonly CheckedPlanJson[] } {
  const [first, ...others] = plans.map(checkedPlanJson);
  return first !== undefined && others.length === 0 ? first : { plans: plans.map(checkedPlanJson) };
}

function checkedPlanJson(checked: CheckedPlan): CheckedPlanJson {
  const { plan, revision, check, findings } = checked;
  return {
    plan,
    revision,
    check,
    findings: [...findings].sort(compareFindings).map(findingJson),
    counts: countFindings(findings),
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
