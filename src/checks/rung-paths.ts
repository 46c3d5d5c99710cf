/**
 * The paths on which a rung or a roll call hangs: for each place a member may call from, the best way to anybody
 * they want to reach. Radios and hearers are alternatives, so a place fails only where all of them do.
 */
import type { RadioPath } from '../consequences/paths.ts';
import { placesOf } from '../consequences/wanted-paths.ts';
import type { Observation } from '../findings/finding.ts';
import type { Plan, Rung, Trial } from '../plan/model.ts';
import type { Verdict } from '../reach/verdict.ts';
import { endText, figuresText, marginText, wasHeard } from './path-words.ts';
import type { RuleContext } from './rule.ts';

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

/**
 * Whether trials have said all there is to say: somebody was heard, or nothing was where the ladder sends people,
 * which is a finding of its own.
 */
function isSettled(rung: Rung, trials: readonly Trial[]): boolean {
  return wasHeard(trials) || (rung.from !== undefined && trials.some(({ heard }) => heard === 'nothing'));
}

/** Rungs whose best path from some places has a verdict, and on which nobody was heard: one observation a rung. */
export function* rungsWithVerdict(
  context: RuleContext,
  verdict: Verdict,
  says: string,
): Generator<Observation> {
  const { plan, consequences, paths } = context;
  if (!paths) return;
  for (const ladder of plan.ladders.values()) {
    const who = consequences.membersOf(ladder.who);
    for (const [index, rung] of ladder.rungs.entries()) {
      const found = callPaths(plan, paths, who, rung, ladder.reach).filter(
        ({ best, trials }) =>
          best.prediction.ok && best.prediction.worse.verdict === verdict && !isSettled(rung, trials),
      );
      const [first, ...others] = new Map(found.map((each) => [each.place, each])).values();
      if (!first) continue;
      const name = ({ place }: CallPath) => plan.places.get(place)?.name ?? place;
      const more = others.map((each) => `${name(each)} ${marginText(each.best)}`);
      const also =
        more.length === 0 ? '' : ` So ${more.length === 1 ? 'it is' : 'are those'} from ${more.join(', ')}.`;
      yield {
        at: ['fallbacks', ladder.id, 'rungs', index],
        message: `From ${name(first)} the path to ${endText(plan, first.best.to)} ${says}: ${figuresText(first.best)}.${also}`,
      };
    }
  }
}

function chance({ prediction }: RadioPath): number {
  return prediction.ok ? prediction.worse.probability : 0;
}
