/** A finding that the group has looked at and keeps: it is listed with the reason, and counts as none. */
import type { Finding, Place } from './finding.ts';

export interface AcceptedFinding {
  readonly finding: Finding;
  readonly because: string;
  /** ISO date of the last day on which it is accepted. */
  readonly until: string;
  /** Where the plan accepts it. */
  readonly acceptedAt: Place;
}
