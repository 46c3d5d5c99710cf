/**
 * Findings in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS standard, 27 March 2020),
 * which editors and code hosts read.
 */
import { compareFindings, type Finding, pathText, type Severity } from './finding.ts';
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

/** The log as a plain object, ready for `JSON.stringify`. Rules without a finding are left out. */
export function sarif(
  findings: readonly Finding[],
  rules: readonly RuleSummary[],
  programVersion: string,
): object {
  const met = new Set(findings.map((finding) => finding.rule));
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
        results: [...findings].sort(compareFindings).map((finding) => result(finding, indexes, seen)),
      },
    ],
  };
}

function result(finding: Finding, indexes: ReadonlyMap<string, number>, seen: Map<string, number>): object {
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
        physicalLocation: {
          artifactLocation: location(place.file),
          region: {
            startLine: place.line,
            startColumn: place.column,
            endLine: place.endLine,
            endColumn: place.endColumn,
          },
        },
        logicalLocations: [{ fullyQualifiedName: path === '' ? '(the plan)' : path }],
      },
    ],
    // By rule and path, so that a finding is known again when lines move above it.
    partialFingerprints: { 'rulePath/v1': times === 1 ? identity : `${identity} ${times}` },
    properties: { basis: finding.basis },
  };
}

/** Relative names stay relative to the root of the sources; each part is escaped, as a URI asks. */
function location(file: string): object {
  const uri = visibleText(file).replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/');
  return file.startsWith('/') ? { uri: `file://${uri}` } : { uri, uriBaseId: '%SRCROOT%' };
}
