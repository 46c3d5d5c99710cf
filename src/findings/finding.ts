/**
 * What a finding is: something wrong, doubtful or worth knowing about a plan, as plain data.
 *
 * A finding points into the plan by path; where that path stands in the text is worked out once, when
 * the plan is loaded, for the schema and the rules alike.
 */

/** `error`: unlawful, impossible or self-contradictory. `warning`: against a published band plan, or probably a mistake. `note`: good practice. */
export type Severity = 'error' | 'warning' | 'note';

/** What a finding rests on. An error of basis `law` cannot be accepted away. */
export type Basis = 'law' | 'band plan' | 'practice' | 'consistency';

/** Keys and list positions from the root of the plan. Slot numbers are numbers; everything is compared as text. */
export type PlanPath = readonly (string | number)[];

/** A published document that a figure or a rule rests on. */
export interface Source {
  readonly document: string;
  readonly section?: string;
  /** ISO date of the text that was read. */
  readonly date?: string;
  /** True where the figure was not found in a text that was read: check it before relying on it. */
  readonly fromMemory?: boolean;
}

/** A stretch of the text a finding points at. Lines and columns count from 1; columns are UTF-16 units; ends are exclusive. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** A finding as a rule yields it, before the runner adds what the rule already knows about itself. */
export interface Observation {
  readonly at: PlanPath;
  /** Whether the key at the end of the path is wrong, or the value it holds (the usual case). */
  readonly points?: 'key' | 'value';
  /** One plain sentence with the figures in it: what is, and what was expected. */
  readonly message: string;
  /** What to write instead, where it can be known. */
  readonly suggestion?: string;
  /** The row the figure came from, if it is more exact than the rule's own sources. */
  readonly source?: Source;
}

export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly basis: Basis;
  readonly message: string;
  readonly path: PlanPath;
  readonly place: Place;
  readonly source?: Source;
  readonly suggestion?: string;
}

const weight: Record<Severity, number> = { error: 0, warning: 1, note: 2 };

/** Most serious first, then in the order of the file, then by rule, so that the same plan always lists the same way. */
export function compareFindings(a: Finding, b: Finding): number {
  return (
    weight[a.severity] - weight[b.severity] ||
    (a.place.file < b.place.file ? -1 : a.place.file > b.place.file ? 1 : 0) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column ||
    (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0) ||
    (a.message < b.message ? -1 : a.message > b.message ? 1 : 0)
  );
}

/** A path as people write it: `repeaters.gap.offset`, `members.ward.radios.0`. */
export function pathText(path: PlanPath): string {
  return path.join('.');
}

/** A place as people and editors write it: `plans/hickory-gap.yaml:12:7`. */
export function placeText(place: Place): string {
  return `${place.file}:${place.line}:${place.column}`;
}
