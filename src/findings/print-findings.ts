/**
 * Findings as text for people: the message first, then where, the line itself with carets, and what to write
 * instead. Severity is always a word; colour only repeats it.
 */
import type { AcceptedFinding } from './accepted-finding.ts';
import { codeFrame } from './code-frame.ts';
import { countFindings, countsText } from './count-findings.ts';
import type { DisplayWidth } from './display-width.ts';
import { compareFindings, type Finding, pathText, placeText, type Severity, type Source } from './finding.ts';
import type { SourceText } from './source-text.ts';
import { visibleText } from './visible-text.ts';
import { wrapText } from './wrap-text.ts';

type Paint = (text: string) => string;

/** How parts of the text are coloured; each function may return its text unchanged. */
export type Palette = Readonly<Record<Severity | 'strong' | 'faint', Paint>>;

const unpainted: Paint = (text) => text;

export const plainPalette: Palette = {
  error: unpainted,
  warning: unpainted,
  note: unpainted,
  strong: unpainted,
  faint: unpainted,
};

export interface PrintFindingsOptions {
  /** The texts the findings point into, by file; a finding whose text is not here is printed without its line. */
  readonly texts: ReadonlyMap<string, SourceText>;
  /** Columns of the terminal. */
  readonly width: number;
  readonly palette: Palette;
  readonly widthOf: DisplayWidth;
  /** What the group keeps: listed after the findings, one entry for each acceptance. */
  readonly accepted?: readonly AcceptedFinding[];
  /** Lists errors only; the closing line still counts the rest. */
  readonly quiet?: boolean;
}

/** All findings, most serious first, what is accepted, and a closing line that counts them. Ends with a newline. */
export function printFindings(findings: readonly Finding[], options: PrintFindingsOptions): string {
  const isListed = ({ severity }: Finding) => options.quiet !== true || severity === 'error';
  const blocks = alike(findings.filter(isListed).sort(compareFindings)).map((group) =>
    block(group, options).join('\n'),
  );
  const accepted = (options.accepted ?? []).filter(({ finding }) => isListed(finding));
  if (accepted.length > 0) blocks.push(acceptedList(accepted, options).join('\n'));
  const counts = countFindings(findings);
  const worst = (['error', 'warning', 'note'] as const).find((severity) => counts[severity] > 0);
  const closing =
    findings.length === 0
      ? 'No findings.'
      : `${capitalised(countsText(counts))}${findings.every(isListed) ? '' : '; errors only are listed'}.`;
  const painted = worst === undefined ? closing : options.palette[worst](closing);
  return `${[...blocks, painted].join('\n\n')}\n`;
}

/** Findings that say the same of several places are one entry with several places. */
function alike(sorted: readonly Finding[]): readonly (readonly [Finding, ...Finding[]])[] {
  const groups = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of sorted) {
    const key = JSON.stringify([finding.severity, finding.rule, finding.message, finding.suggestion ?? null]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()];
}

function block(
  [finding, ...others]: readonly [Finding, ...Finding[]],
  options: PrintFindingsOptions,
): string[] {
  const { palette, width, texts, widthOf } = options;
  const hanging = (text: string): string[] => indented(text, '  ', width, widthOf);
  const opening = `${finding.severity}: `;
  const [first = '', ...rest] = wrapText(opening + visibleText(finding.message), width, widthOf);
  const lines = [
    palette[finding.severity](palette.strong(opening.trimEnd())) +
      palette.strong(first.slice(opening.length - 1)),
    ...rest.map((line) => palette.strong(line)),
  ];
  const where = [visibleText(placeText(finding.place)), visibleText(pathText(finding.path))].filter(
    (part) => part !== '',
  );
  lines.push(...hanging(`${where.join('  ')}  (${finding.rule}, ${finding.basis})`).map(palette.faint));

  const source = texts.get(finding.place.file);
  if (source !== undefined) {
    const frame = codeFrame(source, finding.place, width, widthOf);
    lines.push(frame.line, frame.margin + palette[finding.severity](frame.carets));
  }
  if (others.length > 0) {
    lines.push(
      ...hanging(`also at: ${others.map((other) => visibleText(placeText(other.place))).join(', ')}`),
    );
  }
  if (finding.suggestion !== undefined) {
    lines.push(...hanging(`write instead: ${visibleText(finding.suggestion)}`));
  }
  if (finding.source !== undefined) {
    lines.push(...hanging(`source: ${visibleText(sourceLine(finding.source))}`).map(palette.faint));
  }
  return lines;
}

/** Of each acceptance: the rule, what it is accepted of, why and until when. */
function acceptedList(
  accepted: readonly AcceptedFinding[],
  { palette, width, widthOf }: PrintFindingsOptions,
): string[] {
  const entries = new Map<string, [AcceptedFinding, ...AcceptedFinding[]]>();
  for (const each of accepted) {
    const key = `${each.finding.rule} ${placeText(each.acceptedAt)}`;
    const entry = entries.get(key);
    if (entry === undefined) entries.set(key, [each]);
    else entry.push(each);
  }
  const lines = [...entries.values()].flatMap(([first, ...others]) => {
    const places = [first, ...others].map(({ finding: { place, path } }) =>
      `${visibleText(placeText(place))} ${visibleText(pathText(path))}`.trimEnd(),
    );
    const said = `${visibleText(first.because).replace(/[.]$/, '')}; until ${first.until}.`;
    return [
      ...indented(`${first.finding.rule}  ${places.join(', ')}`, '  ', width, widthOf).map(palette.faint),
      ...indented(said, '    ', width, widthOf),
    ];
  });
  return [palette.strong('Accepted, with the reason of the group:'), ...lines];
}

/** What runs over is indented by two more. */
function indented(text: string, by: string, width: number, widthOf: DisplayWidth): string[] {
  return wrapText(text, width - by.length - 2, widthOf).map(
    (line, index) => `${by}${index === 0 ? '' : '  '}${line}`,
  );
}

/** A source in one line: document, section, date, and whether it was only remembered. */
export function sourceLine(source: Source): string {
  return [
    source.document,
    source.section,
    source.date,
    source.fromMemory === true ? 'from memory: check it' : undefined,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}

function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
