import type { CheckIn } from '../../plan/model.ts';
import { listNames } from '../list-names.ts';
import { memberKinds } from '../member-kinds.ts';
import { overlappingPairs } from '../overlapping-pairs.ts';
import type { RuleContext } from '../rule.ts';
import { commonPractice, rule } from '../rule.ts';
import { timeText } from '../starts.ts';

/** A member with one radio cannot be on two channels at once. */
export const checkInOverlap = rule({
  id: 'check-in/overlap',
  severity: 'warning',
  basis: 'consistency',
  looksFor:
    'A member expected at two check-ins at the same time on different channels, without a radio for each.',
  why: 'They answer at one and are missed at the other, and the ladder is started for nothing.',
  mend: 'Move one of the check-ins, or take the member out of one.',
  sources: [commonPractice],
  bad: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:40", lasts: 5 min, who: [ben] } # finding`,
  good: `
check-ins:
  morning: { name: Morning check-in, channel: 1, days: every day, at: "07:30", lasts: 15 min, who: all, control: [ada], missed: first }
  watch: { name: Trail watch, listen: true, channel: 3, at: "07:45", lasts: 5 min, who: [ben] }`,
  *check(context) {
    for (const { first, second } of overlappingPairs(context.plan.checkIns.values())) {
      if (first.channel === second.channel) continue;
      const torn = bothExpected(context, first, second);
      if (torn.length === 0) continue;
      yield {
        at: ['check-ins', second.id, 'at'],
        message: `${second.name} at ${timeText(second.at)} on slot ${second.channel} overlaps ${first.name} at ${timeText(first.at)} on slot ${first.channel} for ${listNames(torn)}.`,
      };
    }
  },
});

/** Names of members expected at both who have no two radios of which each holds one of the channels. */
function bothExpected(
  { plan, consequences }: RuleContext,
  first: CheckIn,
  second: CheckIn,
): readonly string[] {
  const [atFirst, atSecond] = [first, second].map(
    ({ who, control }) => new Set([...consequences.membersOf(who), ...control]),
  );
  return memberKinds(plan).flatMap((kind) => {
    const [{ id: someone, radios }] = kind;
    const holds = (radio: string, slot: number): boolean =>
      (consequences.use(someone, radio, slot)?.may ?? 'not held') !== 'not held';
    const able = radios.some(
      (one, index) =>
        holds(one, first.channel) && radios.some((other, at) => at !== index && holds(other, second.channel)),
    );
    return able ? [] : kind.filter(({ id }) => atFirst?.has(id) && atSecond?.has(id)).map(({ name }) => name);
  });
}
