import type { Consequences } from '../../consequences/consequences.ts';
import { overlappingPairs } from '../../consequences/overlapping-pairs.ts';
import { timeText } from '../../consequences/starts.ts';
import type { CheckIn, Member, Plan } from '../../plan/model.ts';
import { listNames } from '../list-names.ts';
import { commonPractice, rule } from '../rule.ts';

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
  *check({ plan, consequences }) {
    const torn = new Map<string, { first: CheckIn; second: CheckIn; names: string[] }>();
    for (const { together, members } of sameCheckIns(plan, consequences)) {
      for (const { first, second } of overlappingPairs(together)) {
        if (first.channel === second.channel) continue;
        const names = members
          .filter((member) => !holdsBoth(consequences, member, first, second))
          .map(({ name }) => name);
        if (names.length === 0) continue;
        const key = `${first.id} ${second.id}`;
        const known = torn.get(key);
        if (known) known.names.push(...names);
        else torn.set(key, { first, second, names });
      }
    }
    for (const { first, second, names } of torn.values())
      yield {
        at: ['check-ins', second.id, 'at'],
        message: `${second.name} at ${timeText(second.at)} on slot ${second.channel} overlaps ${first.name} at ${timeText(first.at)} on slot ${first.channel} for ${listNames(names)}.`,
      };
  },
});

interface Expected {
  readonly together: readonly CheckIn[];
  readonly members: readonly Member[];
}

/** Members by the check-ins at which they are expected, so that each set of check-ins is held against itself once. */
function sameCheckIns(plan: Plan, consequences: Consequences): Iterable<Expected> {
  const expected = new Map<string, CheckIn[]>();
  for (const checkIn of plan.checkIns.values()) {
    // One that overlaps itself is found as such.
    if (checkIn.repeatsMin !== undefined && checkIn.lastsMin > checkIn.repeatsMin) continue;
    for (const member of new Set([...consequences.membersOf(checkIn.who), ...checkIn.control])) {
      const known = expected.get(member);
      if (known) known.push(checkIn);
      else expected.set(member, [checkIn]);
    }
  }
  const groups = new Map<string, { together: readonly CheckIn[]; members: Member[] }>();
  for (const member of plan.members.values()) {
    const together = expected.get(member.id) ?? [];
    if (together.length < 2) continue;
    const key = together.map(({ id }) => id).join(' ');
    const group = groups.get(key);
    if (group) group.members.push(member);
    else groups.set(key, { together, members: [member] });
  }
  return groups.values();
}

/** Whether the member has two radios of which each holds one of the channels. */
function holdsBoth(
  consequences: Consequences,
  { id, radios }: Member,
  first: CheckIn,
  second: CheckIn,
): boolean {
  const holds = (radio: string, slot: number): boolean =>
    (consequences.use(id, radio, slot)?.may ?? 'not held') !== 'not held';
  return radios.some(
    (one, index) =>
      holds(one, first.channel) && radios.some((other, at) => at !== index && holds(other, second.channel)),
  );
}
