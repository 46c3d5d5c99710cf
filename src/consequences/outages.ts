/**
 * What is lost when one thing fails, or two: stations that stop with it and after how many hours of backup,
 * rungs and check-ins that end, members who are off the air or cut off altogether.
 *
 * *Off the air*: no way by radio is left. *Cut off*: none at all, not even a place to meet. How long it lasts is
 * until somebody mends it; what can be known is how long it holds before.
 */
import { lossTimes } from '../fallback/loss-times.ts';
import { smallCuts } from '../fallback/small-cuts.ts';
import type { CheckIn, Plan } from '../plan/model.ts';
import { type Hangings, hangings, keyOf, type Thing } from './hangs-on.ts';
import { type Rights, type RungAt, type Way, waysOf } from './ways.ts';

export type Standing = 'off the air' | 'cut off';

export interface Lost<What> {
  readonly what: What;
  /** Minutes from the failure; 0 where nothing bridges it. */
  readonly afterMin: number;
}

export interface MemberOutage {
  readonly member: string;
  readonly rungs: readonly Lost<RungAt>[];
  /** The worst that comes of it; absent where a way by radio is left. */
  readonly standing?: Lost<Standing>;
  /** Rungs without a radio that are left. */
  readonly left: readonly RungAt[];
}

export interface Outage {
  readonly failed: readonly [Thing] | readonly [Thing, Thing];
  /** What stops with it, in the order it does. */
  readonly stopped: readonly Lost<Thing>[];
  readonly checkIns: readonly Lost<string>[];
  /** Members who lose a rung or worse, in the order of the roster. */
  readonly members: readonly MemberOutage[];
}

export interface Outages {
  /** One thing fails; only those by which somebody loses something. */
  readonly single: readonly Outage[];
  /** Two fail together and leave a member worse off than either alone. Only those members are in it. */
  readonly double: readonly Outage[];
}

export function outages(plan: Plan, rights: Rights, hangs: Hangings = hangings(plan)): Outages {
  const roster = [...plan.members.keys()].map((member) => ({
    member,
    ways: waysOf(plan, rights, hangs, member),
  }));
  // Whose ways a thing ends: so that each failure is held against those it touches, not against everybody.
  const touched = new Map<string, Set<number>>();
  for (const [index, { ways }] of roster.entries()) {
    for (const { ends } of ways) {
      for (const key of ends) {
        const known = touched.get(key);
        if (known) known.add(index);
        else touched.set(key, new Set([index]));
      }
    }
  }
  const outageOf = (failed: Outage['failed'], members: Iterable<number>): Outage => {
    const keys = failed.map(({ key }) => key);
    const lost = lossTimes(hangs.dependences, keys);
    const stopped = [...lost].flatMap(([key, afterMin]) => {
      const thing = hangs.things.get(key);
      return thing === undefined || keys.includes(key) ? [] : [{ what: thing, afterMin }];
    });
    return {
      failed,
      stopped,
      checkIns: [...plan.checkIns.values()].flatMap((checkIn) => lostCheckIn(checkIn, hangs, lost)),
      members: [...members]
        .toSorted((a, b) => a - b)
        .flatMap((index) => {
          const entry = roster[index];
          if (!entry || keys.includes(keyOf('member', entry.member))) return [];
          const outage = memberOutage(entry.member, entry.ways, lost);
          return outage.rungs.length === 0 && outage.standing === undefined ? [] : [outage];
        }),
    };
  };
  const single = [...hangs.things.values()]
    .map((thing) => outageOf([thing], touched.get(thing.key) ?? []))
    .filter(({ members, checkIns }) => members.length > 0 || checkIns.length > 0);

  const pairs = new Map<
    string,
    { readonly failed: readonly [Thing, Thing]; readonly members: Set<number> }
  >();
  for (const [index, { ways }] of roster.entries()) {
    const all = ways.map(({ ends }) => ends);
    const byRadio = ways.filter(({ radio }) => radio).map(({ ends }) => ends);
    for (const [one, other] of [...smallCuts(byRadio).pairs, ...smallCuts(all).pairs]) {
      const [a, b] = [hangs.things.get(one), hangs.things.get(other)];
      if (!a || !b) continue;
      const known = pairs.get(`${one} ${other}`);
      if (known) known.members.add(index);
      else pairs.set(`${one} ${other}`, { failed: [a, b], members: new Set([index]) });
    }
  }
  const double = [...pairs.values()].map(({ failed, members }) => outageOf(failed, members));
  return { single, double };
}

function memberOutage(member: string, ways: readonly Way[], lost: ReadonlyMap<string, number>): MemberOutage {
  const ended = ways.map((way) => ({ way, afterMin: firstOf(way.needs, lost) }));
  const rungs = new Map<string, { rungAt: RungAt; afterMin: number }>();
  for (const { way, afterMin } of ended) {
    if (!way.rungAt) continue;
    const key = `${way.rungAt.ladder} ${way.rungAt.index}`;
    rungs.set(key, { rungAt: way.rungAt, afterMin: Math.max(afterMin, rungs.get(key)?.afterMin ?? 0) });
  }
  const byRadio = ended.filter(({ way }) => way.radio);
  const lastMin = (these: typeof ended) => Math.max(...these.map(({ afterMin }) => afterMin));
  const [offMin, cutMin] = [lastMin(byRadio), lastMin(ended)];
  const standing: Lost<Standing> | undefined =
    ended.length > 0 && cutMin < Infinity
      ? { what: 'cut off', afterMin: cutMin }
      : byRadio.length > 0 && offMin < Infinity
        ? { what: 'off the air', afterMin: offMin }
        : undefined;
  return {
    member,
    rungs: [...rungs.values()].flatMap(({ rungAt, afterMin }) =>
      afterMin < Infinity ? [{ what: rungAt, afterMin }] : [],
    ),
    ...(standing && { standing }),
    left: ended.flatMap(({ way, afterMin }) =>
      !way.radio && way.rungAt && afterMin === Infinity ? [way.rungAt] : [],
    ),
  };
}

/** A check-in ends with its channel, or when none of those who could be net control is left. */
function lostCheckIn(
  { id, channel, control, listen }: CheckIn,
  hangs: Hangings,
  lost: ReadonlyMap<string, number>,
): readonly Lost<string>[] {
  const silentMin = firstOf(hangs.channelNeeds(channel), lost);
  const nobodyMin =
    listen || control.length === 0
      ? Infinity
      : Math.max(...control.map((member) => lost.get(keyOf('member', member)) ?? Infinity));
  const afterMin = Math.min(silentMin, nobodyMin);
  return afterMin < Infinity ? [{ what: id, afterMin }] : [];
}

function firstOf(keys: Iterable<string>, lost: ReadonlyMap<string, number>): number {
  let first = Infinity;
  for (const key of keys) first = Math.min(first, lost.get(key) ?? Infinity);
  return first;
}
