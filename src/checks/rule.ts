/** What a rule is. One rule is one small file: what it looks for, why, how to mend it, an example of each, and the check. */
import type { RadioPath } from '../consequences/paths.ts';
import type { PlanInLaw } from '../consequences/plan-in-law.ts';
import type { Basis, Observation, Severity, Source } from '../findings/finding.ts';
import type { Departure, IdleAcceptance } from './acceptance.ts';

/** A radio, by its kind and owner, and what its last clean audit found in it. */
export interface HeldRevision {
  readonly radio: string;
  readonly for: string;
  readonly date: string;
  readonly revision: number;
  readonly check: string;
  /** Holds the plan as it is now. */
  readonly current: boolean;
}

export interface RuleContext extends PlanInLaw {
  /** ISO date on which the plan is checked. */
  readonly today: string;
  /** Acceptances that did nothing; known only once the other rules have run, and empty until then. */
  readonly idle: readonly IdleAcceptance[];
  /** What was accepted, and by which entry; known and empty likewise. */
  readonly departures: readonly Departure[];
  /** Every radio path of the plan, predicted; absent unless they were asked for and the plan has ground for them. */
  readonly paths?: readonly RadioPath[];
  /** Which radio was last found to hold which revision; empty where the plan names no record. */
  readonly held: readonly HeldRevision[];
  /** Ids of all rules that run. */
  readonly ruleIds: readonly string[];
}

export interface Rule {
  /** `topic/what-is-wrong`: the path of its file, kept for ever. */
  readonly id: string;
  readonly severity: Severity;
  readonly basis: Basis;
  readonly looksFor: string;
  readonly why: string;
  readonly mend: string;
  /** Where the rule comes from. Custom of the trade is named as common practice. */
  readonly sources: readonly [Source, ...Source[]];
  /** A rule about radio paths runs only where they were predicted. */
  readonly needs?: 'paths';
  /** A piece of a plan that breaks the rule; `# finding` stands on each line it is found at. */
  readonly bad: string;
  /** Its nearest piece that does not. */
  readonly good: string;
  /** Yields what it sees; prints nothing, throws nothing, decides no severity. */
  check(context: RuleContext): Iterable<Observation>;
}

export function rule(definition: Rule): Rule {
  return definition;
}

export const commonPractice: Source = { document: 'common practice' };
