import { type CallPath, callPaths } from '../consequences/call-paths.ts';
import { wasHeard } from '../consequences/was-heard.ts';
import type { Observation } from '../findings/finding.ts';
import type { Rung, Trial } from '../plan/model.ts';
import type { Verdict } from '../reach/verdict.ts';
import { endText, figuresText, marginText } from './path-words.ts';
import type { RuleContext } from './rule.ts';

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
