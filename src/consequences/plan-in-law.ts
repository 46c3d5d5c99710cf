import type { Plan } from '../plan/model.ts';
import type { Law } from '../regulations/law.ts';
import type { Consequences } from './consequences.ts';

/** A plan, the rules it is held against, and what follows from both. */
export interface PlanInLaw {
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
}
