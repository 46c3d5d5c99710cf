/**
 * Findings as workflow commands, `::error file=…,line=…::message`, which a build on GitHub shows beside the
 * lines meant (GitHub documentation, Workflow commands for GitHub Actions). At most ten of a kind are shown
 * for a step, so the most serious come first.
 */
import { compareFindings, type Finding, type Severity } from './finding.ts';

const commands: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', note: 'notice' };

/** One line a finding, each ended by a newline; empty when there are none. */
export function githubAnnotations(findings: readonly Finding[]): string {
  return [...findings].sort(compareFindings).map(annotation).join('');
}

function annotation(finding: Finding): string {
  const { place, suggestion } = finding;
  const properties = [
    `file=${escapeProperty(place.file)}`,
    `line=${place.line}`,
    `endLine=${place.endLine}`,
    `col=${place.column}`,
    `title=${escapeProperty(finding.rule)}`,
  ].join(',');
  const text =
    suggestion === undefined ? finding.message : `${finding.message}\nWrite instead: ${suggestion}`;
  return `::${commands[finding.severity]} ${properties}::${escapeText(text)}\n`;
}

/** A line end in a message would begin a new command, which text from a plan must never be able to do. */
function escapeText(text: string): string {
  return withoutControls(text).replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function escapeProperty(text: string): string {
  return escapeText(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}

/** All controls but the two line ends, which are escaped. */
function withoutControls(text: string): string {
  return text.replace(/[^\P{Cc}\r\n]/gu, '');
}
