/**
 * The paths on which a rung or a roll call hangs: for each place a member may call from, the best way to anybody
 * they want to reach. Radios and hearers are alternatives, so a place fails only where all of them do.
 */

import type { Plan, Trial } from '../plan/model.ts';
import type { RadioPath } from './paths.ts';
import { placesOf } from './wanted-paths.ts';

export interface CallPath {
  readonly place: string;
  readonly member: string;
  /** The likeliest of the paths that would do. */
  readonly best: RadioPath;
  /** What was heard on any of them. */
  readonly trials: readonly Trial[];
}

/** One for each member and place; those without a path are left out, and so are paths without ground. */
export function callPaths(
  plan: Plan,
  paths: readonly RadioPath[],
  who: readonly string[],
  call: { readonly channel?: number; readonly from?: string },
  reach: readonly string[],
): readonly CallPath[] {
  const channel = call.channel === undefined ? undefined : plan.channels.get(call.channel);
  if (!channel) return [];
  const goals = new Set(reach.flatMap((id) => plan.members.get(id)?.at ?? []));
  const serves = ({ to, slot }: RadioPath): boolean => {
    if (channel.kind === 'repeater') return to.kind === 'repeater' && to.id === channel.repeater;
    if (channel.mode === 'packet') return to.kind === 'digipeater' || to.kind === 'mailbox';
    return to.kind === 'member' && slot === channel.slot && goals.has(to.place);
  };
  const serving = paths.filter((path) => path.from.kind === 'member' && path.prediction.ok && serves(path));
  return who.flatMap((id) => {
    const member = plan.members.get(id);
    if (!member) return [];
    return (call.from === undefined ? placesOf(member) : [call.from]).flatMap((place) => {
      const usable = serving
        .filter(
          ({ from }) => from.kind === 'member' && from.place === place && member.radios.includes(from.radio),
        )
        .toSorted((a, b) => chance(b) - chance(a));
      const [best] = usable;
      return best ? [{ place, member: id, best, trials: usable.flatMap(({ trials }) => trials) }] : [];
    });
  });
}

function chance({ prediction }: RadioPath): number {
  return prediction.ok ? prediction.worse.probability : 0;
}
