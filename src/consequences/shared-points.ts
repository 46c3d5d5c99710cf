/**
 * Weak spots that no single failure shows at a glance: things that two rungs of one ladder hang on together,
 * things whose loss splits the group into parts that cannot talk to each other, and members who hang on the
 * air by one channel alone.
 */
import { graphOf } from '../fallback/graph.ts';
import { partsOf } from '../fallback/parts.ts';
import { weakSpots } from '../fallback/weak-spots.ts';
import type { Plan } from '../plan/model.ts';
import { type Hangings, hangings, keyOf, type Thing } from './hangs-on.ts';
import type { Rights } from './ways.ts';

export interface SharedPoint {
  readonly ladder: string;
  readonly thing: Thing;
  /** Places of the radio rungs that hang on it, from 0; two at least. */
  readonly rungs: readonly number[];
}

export interface Split {
  readonly thing: Thing;
  /** Members of each part that is left, the largest first. */
  readonly parts: readonly (readonly string[])[];
}

export interface OneChannel {
  readonly member: string;
  readonly slot: number;
}

export interface SharedPoints {
  readonly shared: readonly SharedPoint[];
  /** Who is in one part with nothing failed; more than one part means that some can never talk to others. */
  readonly parts: readonly (readonly string[])[];
  readonly splits: readonly Split[];
  readonly oneChannel: readonly OneChannel[];
}

export function sharedPoints(plan: Plan, rights: Rights, hangs: Hangings = hangings(plan)): SharedPoints {
  const joins = [...plan.members.keys()].flatMap((member) =>
    [...plan.channels.keys()].flatMap((slot) =>
      rights.best(member, slot)?.may === 'transmit'
        ? [[keyOf('member', member), keyOf('channel', slot)] as const]
        : [],
    ),
  );
  const talk = graphOf(
    joins,
    [...plan.members.keys()].map((member) => keyOf('member', member)),
  );
  const membersIn = (gone: ReadonlySet<string>) =>
    partsOf(talk, gone)
      .map((part) => part.flatMap((key) => (key.startsWith('member:') ? [key.slice('member:'.length)] : [])))
      .filter((part) => part.length > 0)
      .toSorted((a, b) => b.length - a.length);
  const parts = membersIn(new Set());
  const weak = weakSpots(talk);
  const channels = [...plan.channels.keys()].map((slot) => ({
    key: keyOf('channel', slot),
    ends: hangs.endsOf(hangs.channelNeeds(slot)),
  }));
  const splits = [...hangs.things.values()].flatMap((thing) => {
    const gone = new Set([
      thing.key,
      ...channels.filter(({ ends }) => ends.has(thing.key)).map(({ key }) => key),
    ]);
    // One thing of the graph alone splits it only where the walk found it to be a weak spot.
    if (gone.size === 1 && !weak.things.has(thing.key)) return [];
    const left = membersIn(gone);
    const own = thing.kind === 'member' && parts.some((part) => part.length === 1 && part[0] === thing.id);
    return left.length > parts.length - (own ? 1 : 0) ? [{ thing, parts: left }] : [];
  });
  return {
    shared: [...plan.ladders.keys()].flatMap((ladder) => sharedOf(plan, hangs, ladder)),
    parts,
    splits,
    oneChannel: joins.flatMap(([member, channel]) =>
      talk.get(member)?.size === 1
        ? [{ member: member.slice('member:'.length), slot: Number(channel.slice('channel:'.length)) }]
        : [],
    ),
  };
}

function sharedOf(plan: Plan, hangs: Hangings, ladderId: string): readonly SharedPoint[] {
  const rungs = plan.ladders.get(ladderId)?.rungs ?? [];
  const hanging = new Map<string, number[]>();
  for (const [index, rung] of rungs.entries()) {
    if (rung.channel === undefined) continue;
    for (const key of hangs.endsOf(hangs.rungNeeds(rung) ?? []))
      hanging.set(key, [...(hanging.get(key) ?? []), index]);
  }
  const shared = [...hanging].filter(([, indexes]) => indexes.length > 1);
  return shared.flatMap(([key, indexes]) => {
    const thing = hangs.things.get(key);
    // What lies under a shared thing is shared with it and need not be said again.
    const under = shared.some(
      ([other, theirs]) =>
        other !== key && hangs.endsOf([other]).has(key) && theirs.join() === indexes.join(),
    );
    return thing === undefined || under ? [] : [{ ladder: ladderId, thing, rungs: indexes }];
  });
}
