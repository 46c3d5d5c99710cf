/** Every path through digipeaters that a plan writes, in its routes and in the rungs of its ladders. */
import type { PlanPath } from '../findings/finding.ts';
import type { Plan } from '../plan/model.ts';

/**
 * Digipeaters a frame has room for: AX.25 Link Access Protocol, version 2.2 revision 4 (2025), 3.12.5. The text
 * of 1998 is remembered as allowing two.
 */
export const mostInFrame = 8;

/** Beyond this little arrives (common practice, and the limit of the 1998 text, from memory). */
export const mostUseful = 2;

export interface DigipeaterPath {
  readonly at: PlanPath;
  readonly through: readonly string[];
}

export function digipeaterPaths(plan: Plan): readonly DigipeaterPath[] {
  return [
    ...plan.routes.map(({ through }, index) => ({ at: ['packet', 'routes', index, 'through'], through })),
    ...[...plan.ladders.values()].flatMap(({ id, rungs }) =>
      rungs.map(({ through }, index) => ({ at: ['fallbacks', id, 'rungs', index, 'through'], through })),
    ),
  ];
}
