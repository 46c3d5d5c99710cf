/**
 * Findings in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS standard, 27 March 2020),
 * which editors and code hosts read.
 */
import type { AcceptedFinding } from './accepted-finding.ts';
import { compareFindings, type Finding, type Place, pathText, type Severity } from './finding.ts';
import { sourceLine } from './print-findings.ts';
import { visibleText } from './visible-text.ts';

/** What SARIF tells of a rule. */
export interface RuleSummary {
  readonly id: string;
  readonly severity: Severity;
  readonly looksFor: string;
  readonly why: string;
  readonly mend: string;
}

/** What the log tells beside the findings. */
export interface SarifExtras {
  /** Findings that the group keeps: results that are suppressed (section 3.35). */
  readonly accepted?: readonly AcceptedFinding[];
  /** Plans that could not be read, and why: the run was then no success (section 3.20). */
  readonly unread?: readonly { readonly plan: string; readonly why: string }[];
}

/** The log as a plain object, ready for `JSON.stringify`. Rules without a finding are left out. */
export function sarif(
  findings: readonly Finding[],
  rules: readonly RuleSummary[],
  programVersion: string,
  { accepted = [], unread = [] }: SarifExtras = {},
): object {
  const results: readonly Result[] = [...findings.map((finding) => ({ finding })), ...accepted].sort((a, b) =>
    compareFindings(a.finding, b.finding),
  );
  const met = new Set(results.map(({ finding }) => finding.rule));
  const described = rules.filter((rule) => met.has(rule.id)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const indexes = new Map(described.map((rule, index) => [rule.id, index]));
  const seen = new Map<string, number>();
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'readback',
            version: programVersion,
            rules: described.map((rule) => ({
              id: rule.id,
              shortDescription: { text: rule.looksFor },
              fullDescription: { text: rule.why },
              help: { text: rule.mend },
              // SARIF's levels happen to have the names of our severities (section 3.27.10).
              defaultConfiguration: { level: rule.severity },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        ...(unread.length > 0 && { invocations: [failedInvocation(unread)] }),
        results: results.map((each) => result(each, indexes, seen)),
      },
    ],
  };
}

interface Result extends Partial<Omit<AcceptedFinding, 'finding'>> {
  readonly finding: Finding;
}

function result(each: Result, indexes: ReadonlyMap<string, number>, seen: Map<string, number>): object {
  const { finding } = each;
  const { place, suggestion } = finding;
  const ruleIndex = indexes.get(finding.rule);
  const path = pathText(finding.path);
  const identity = `${finding.rule} ${path}`;
  const times = (seen.get(identity) ?? 0) + 1;
  seen.set(identity, times);
  const source = finding.source === undefined ? '' : ` Source: ${sourceLine(finding.source)}.`;
  const instead = suggestion === undefined ? '' : ` Write instead: ${suggestion}`;
  return {
    ruleId: finding.rule,
    ...(ruleIndex === undefined ? {} : { ruleIndex }),
    level: finding.severity,
    message: { text: visibleText(`${finding.message}${source}${instead}`) },
    locations: [
      {
        physicalLocation: physicalLocation(place),
        logicalLocations: [{ fullyQualifiedName: path === '' ? '(the plan)' : path }],
      },
    ],
    // By rule and path, so that a finding is known again when lines move above it.
    partialFingerprints: { 'rulePath/v1': times === 1 ? identity : `${identity} ${times}` },
    // All results have this list, or none may (section 3.27.23); an empty one says that the result stands.
    suppressions: suppressions(each),
    properties: { basis: finding.basis },
  };
}

/** The acceptance stands in the plan itself, which is what the log is about: `inSource` (section 3.35.2). */
function suppressions({ because, until, acceptedAt }: Result): readonly object[] {
  if (because === undefined || acceptedAt === undefined) return [];
  return [
    {
      kind: 'inSource',
      status: 'accepted',
      justification: visibleText(because),
      location: { physicalLocation: physicalLocation(acceptedAt) },
      properties: { until },
    },
  ];
}

function failedInvocation(unread: NonNullable<SarifExtras['unread']>): object {
  return {
    executionSuccessful: false,
    toolExecutionNotifications: unread.map(({ plan, why }) => ({
      level: 'error',
      message: { text: visibleText(why) },
      locations: [{ physicalLocation: { artifactLocation: location(plan) } }],
    })),
  };
}

function physicalLocation(place: Place): object {
  return {
    artifactLocation: location(place.file),
    region: {
      startLine: place.line,
      startColumn: place.column,
      endLine: place.endLine,
      endColumn: place.endColumn,
    },
  };
}

/** Relative names stay relative to the root of the sources; each part is escaped, as a URI asks. */
function location(file: string): object {
  const uri = visibleText(file).replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/');
  return file.startsWith('/') ? { uri: `file://${uri}` } : { uri, uriBaseId: '%SRCROOT%' };
}
