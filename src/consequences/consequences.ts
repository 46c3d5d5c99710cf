/**
 * What follows from a plan without being written in it. Each table is worked out when first asked for, and
 * once; nothing later computes any of it again.
 */
import type { CheckIn, Ladder, Plan, Radio } from '../plan/model.ts';
import type { Law } from '../regulations/law.ts';
import { type ChannelOutcome, type ChannelParticulars, channelParticulars } from './channel-particulars.ts';
import { hangings } from './hangs-on.ts';
import { memberKinds } from './member-kinds.ts';
import { type Occurrence, occurrences, recurrenceFor } from './occurrences.ts';
import { type Outages, outages } from './outages.ts';
import { type PacketTimes, packetTimes } from './packet-times.ts';
import { radioFit } from './radio-fit.ts';
import { type SharedPoints, sharedPoints } from './shared-points.ts';
import { type ShownName, shownNames } from './shown-names.ts';
import { type Silence, silences, silenceYear } from './silences.ts';
import { type Site, sites } from './sites.ts';
import { type Use, useOf } from './use.ts';
import { membersOf } from './who.ts';

export interface Consequences {
  /** Every channel, whether or not its figures could be found. */
  readonly outcomes: ReadonlyMap<number, ChannelOutcome>;
  /** Particulars of the channels whose figures are known, by slot. */
  readonly channels: ReadonlyMap<number, ChannelParticulars>;
  /** What a member may do on a channel with a radio; undefined where one of the three is unknown. */
  use(member: string, radio: string, slot: number): Use | undefined;
  /** The most a member may do on a channel with any radio they hold. */
  best(member: string, slot: number): BestUse | undefined;
  /** Slots that a kind of radio can hold at all, for someone who holds that radio. */
  slotsOf(radio: string): readonly number[];
  /** Members who hold a kind of radio. */
  holdersOf(radio: string): readonly string[];
  shownNames(radio: Radio): ReadonlyMap<number, ShownName>;
  membersOf(who: CheckIn['who']): readonly string[];
  laddersOf(member: string): readonly Ladder[];
  checkInsOf(member: string): readonly CheckIn[];
  /**
   * Check-ins from one ISO date to another, both included, in order of time.
   * @throws {RangeError} if the plan's time zone is in no database
   */
  occurrences(from: string, to: string): Promise<readonly Occurrence[]>;
  /** How long each member can be silent unnoticed, over the year from an ISO date; fails as occurrences do. */
  silences(from: string): Promise<readonly Silence[]>;
  outages(): Outages;
  sharedPoints(): SharedPoints;
  /** For a message of so many characters of plain text. */
  packetTimes(characters: number): PacketTimes;
  /** What transmits and listens at each place where several stations do. */
  sites(): readonly Site[];
}

export interface BestUse extends Use {
  readonly radio: string;
}

const rank = { transmit: 0, 'listen only': 1, 'not held': 2 } as const;

export function consequencesOf(plan: Plan, law: Law): Consequences {
  const outcomes = new Map(
    [...plan.channels].map(([slot, channel]) => [slot, channelParticulars(plan, law, channel)]),
  );
  const channels = new Map(
    [...outcomes].flatMap(([slot, outcome]) => (outcome.known ? [[slot, outcome.particulars] as const] : [])),
  );
  const firstOfKind = once(() => {
    const kinds = memberKinds({ plan, law });
    return new Map(kinds.flatMap((kind) => kind.map(({ id }) => [id, kind[0]] as const)));
  });
  // Worked out for the first member of each kind; the others differ in the licence they hold alone.
  const useOfKind = once((first: string, radioId: string, slot: number): Use | undefined => {
    const [member, radio, on] = [plan.members.get(first), plan.radios.get(radioId), channels.get(slot)];
    return member && radio && on && useOf(plan, law, member, radio, on);
  });
  /** What the first of a kind may do, with the licence that this member holds. */
  const asHeldBy = <Found extends Use>(memberId: string, first: string, found: Found): Found => {
    if (memberId === first || found.licence === undefined || found.service === undefined) return found;
    const licence = plan.members.get(memberId)?.licences.get(found.service);
    return licence ? { ...found, licence } : found;
  };
  const use = (memberId: string, radioId: string, slot: number): Use | undefined => {
    const first = firstOfKind().get(memberId)?.id;
    const found = first === undefined ? undefined : useOfKind(first, radioId, slot);
    return found && first !== undefined ? asHeldBy(memberId, first, found) : undefined;
  };
  const bestOfKind = once((first: string) =>
    once((slot: number): BestUse | undefined =>
      (plan.members.get(first)?.radios ?? [])
        .flatMap((radio) => {
          const found = useOfKind(first, radio, slot);
          return found ? [{ ...found, radio }] : [];
        })
        .toSorted((a, b) => rank[a.may] - rank[b.may])
        .at(0),
    ),
  );
  const best = (memberId: string, slot: number): BestUse | undefined => {
    const first = firstOfKind().get(memberId)?.id;
    const found = first === undefined ? undefined : bestOfKind(first)(slot);
    return found && first !== undefined ? asHeldBy(memberId, first, found) : undefined;
  };
  const holdersOf = once((radio: string): readonly string[] =>
    [...plan.members.values()].filter((member) => member.radios.includes(radio)).map((member) => member.id),
  );
  // Whether a radio holds a channel does not hang on who has it, so nobody is asked member by member.
  const slotsOf = once((radioId: string): readonly number[] => {
    const radio = plan.radios.get(radioId);
    if (!radio || holdersOf(radioId).length === 0) return [];
    return [...channels]
      .flatMap(([slot, on]) => (radioFit(radio, on).holds ? [slot] : []))
      .toSorted((a, b) => a - b);
  });
  const who = new Map<CheckIn['who'], readonly string[]>();
  const sets = new Map<CheckIn['who'], ReadonlySet<string>>();
  const meant = (written: CheckIn['who']): readonly string[] => {
    const found = who.get(written) ?? membersOf(plan, written);
    who.set(written, found);
    return found;
  };
  const means = (written: CheckIn['who'], member: string): boolean => {
    const found = sets.get(written) ?? new Set(meant(written));
    sets.set(written, found);
    return found.has(member);
  };
  let found: readonly Site[] | undefined;
  const tables = {
    outcomes,
    channels,
    use,
    best,
    slotsOf,
    holdersOf,
    shownNames: once((radio: Radio) => shownNames(plan, radio, slotsOf(radio.id))),
    membersOf: meant,
    laddersOf: once((member: string) =>
      [...plan.ladders.values()].filter((ladder) => means(ladder.who, member)),
    ),
    checkInsOf: once((member: string) =>
      [...plan.checkIns.values()].filter(
        (checkIn) => means(checkIn.who, member) || checkIn.control.includes(member),
      ),
    ),
  };
  const held = once(async (from: string, to: string) =>
    occurrences(plan, from, to, await recurrenceFor(plan)),
  );
  const hangs = once(() => hangings(plan));
  return {
    ...tables,
    sites: () => {
      found ??= sites(plan, law, tables);
      return found;
    },
    occurrences: held,
    silences: once(async (from: string) => {
      const { to } = silenceYear(from);
      return silences(plan, await held(from, to), to);
    }),
    outages: once(() => outages(plan, tables, hangs())),
    sharedPoints: once(() => sharedPoints(plan, tables, hangs())),
    packetTimes: once((characters: number) => packetTimes(plan, characters)),
  };
}

/** Remembers the answers of a function of ids, slots, dates and numbers. */
function once<Asked extends readonly unknown[], Answer>(
  work: (...asked: Asked) => Answer,
): (...asked: Asked) => Answer {
  const answers = new Map<unknown, Answer>();
  return (...asked) => {
    const key = asked.length === 1 ? asked[0] : asked.join(' ');
    const known = answers.get(key);
    if (known !== undefined || answers.has(key)) return known as Answer;
    const answer = work(...asked);
    answers.set(key, answer);
    return answer;
  };
}
