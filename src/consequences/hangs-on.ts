/**
 * What each means of getting through hangs on: every thing of a plan that can fail and that alone ends it.
 *
 * Things are named by kind and id, `repeater:gap`, since an asset and a member may share an id. A place can
 * fail with everything that stands on it, which is how a first choice and a fallback come to hang on one
 * hilltop without anybody having written it.
 */

import type { Dependence } from '../fallback/loss-times.ts';
import type { Plan, Rung } from '../plan/model.ts';

export type ThingKind = 'place' | 'asset' | 'repeater' | 'digipeater' | 'mailbox' | 'channel' | 'member';

export interface Thing {
  /** `repeater:gap`, `channel:19` */
  readonly key: string;
  readonly kind: ThingKind;
  /** Id, or the slot of a channel. */
  readonly id: string;
  readonly name: string;
}

export interface Hangings {
  readonly things: ReadonlyMap<string, Thing>;
  /** What depends on what, with how long each outlives it. */
  readonly dependences: readonly Dependence[];
  /** Things, what they need, and what that needs: everything that alone, sooner or later, ends one of them. */
  endsOf(keys: readonly string[]): ReadonlySet<string>;
  /** What a channel needs itself in order to carry anything: that it is clear, and its repeater. */
  channelNeeds(slot: number): readonly string[];
  /** What a rung needs itself, leaving out the people; undefined where it names what is not in the plan. */
  rungNeeds(rung: Rung): readonly string[] | undefined;
}

export function keyOf(kind: ThingKind, id: string | number): string {
  return `${kind}:${id}`;
}

export function hangings(plan: Plan): Hangings {
  const things = new Map<string, Thing>();
  const dependences: Dependence[] = [];
  const add = (
    kind: ThingKind,
    { id, name }: { readonly id: string; readonly name: string },
    needs: readonly string[] = [],
    backupMin = 0,
  ) => {
    const key = keyOf(kind, id);
    things.set(key, { key, kind, id, name });
    if (needs.length > 0) dependences.push({ id: key, dependsOn: needs, backupMin });
  };
  const stations = [
    ['repeater', plan.repeaters],
    ['digipeater', plan.digipeaters],
    ['mailbox', plan.mailboxes],
  ] as const;
  const sections = [['asset', plan.assets], ...stations] as const;
  // Ids in `depends-on` lead to whatever bears them, assets first.
  const written = (id: string): readonly string[] =>
    sections.flatMap(([kind, entries]) => (entries.has(id) ? [keyOf(kind, id)] : [])).slice(0, 1);

  const placeOf = new Map<string, string>();
  for (const [kind, entries] of stations)
    for (const { id, place } of entries.values())
      if (place !== undefined && plan.places.has(place)) placeOf.set(keyOf(kind, id), place);
  const meetings = [...plan.ladders.values()].flatMap(({ rungs }) => rungs.map(({ meet }) => meet));
  const standing = new Set([...placeOf.values(), ...meetings]);
  for (const place of plan.places.values()) if (standing.has(place.id)) add('place', place);
  for (const [kind, entries] of sections) {
    for (const entry of entries.values()) {
      add(kind, entry, entry.dependsOn.flatMap(written), entry.backupMin);
      // A battery outlives the loss of power, but not of the ground it stands on.
      const place = placeOf.get(keyOf(kind, entry.id));
      if (place !== undefined)
        dependences.push({ id: keyOf(kind, entry.id), dependsOn: [keyOf('place', place)], backupMin: 0 });
    }
  }
  for (const channel of plan.channels.values())
    add('channel', { id: String(channel.slot), name: `${channel.slot} ${channel.name}` });
  for (const member of plan.members.values()) add('member', member);

  const needsOf = new Map<string, string[]>();
  for (const { id, dependsOn } of dependences) needsOf.set(id, [...(needsOf.get(id) ?? []), ...dependsOn]);
  const known = new Map<string, ReadonlySet<string>>();
  const supportsOf = (key: string): ReadonlySet<string> => {
    const found = known.get(key) ?? reachableFrom(key, needsOf);
    known.set(key, found);
    return found;
  };
  const channelNeeds = (slot: number): readonly string[] => {
    const channel = plan.channels.get(slot);
    if (!channel) return [];
    const known = channel.kind === 'repeater' && plan.repeaters.has(channel.repeater);
    return [keyOf('channel', slot), ...(known ? [keyOf('repeater', channel.repeater)] : [])];
  };
  const rungNeeds = (rung: Rung): readonly string[] | undefined => {
    const { channel, mailbox, through, meet, dependsOn } = rung;
    if (channel !== undefined && !plan.channels.has(channel)) return undefined;
    if (mailbox !== undefined && !plan.mailboxes.has(mailbox)) return undefined;
    if (through.some((id) => !plan.digipeaters.has(id))) return undefined;
    return [
      ...(channel === undefined ? [] : channelNeeds(channel)),
      ...(mailbox === undefined ? [] : [keyOf('mailbox', mailbox)]),
      ...through.map((id) => keyOf('digipeater', id)),
      ...(meet !== undefined && plan.places.has(meet) ? [keyOf('place', meet)] : []),
      ...dependsOn.flatMap(written),
    ];
  };
  return {
    things,
    dependences,
    endsOf: (keys) => new Set(keys.flatMap((key) => [...supportsOf(key)])),
    channelNeeds,
    rungNeeds,
  };
}

function reachableFrom(start: string, needsOf: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set<string>();
  const waiting = [start];
  for (let key = waiting.pop(); key !== undefined; key = waiting.pop()) {
    if (reached.has(key)) continue;
    reached.add(key);
    waiting.push(...(needsOf.get(key) ?? []));
  }
  return reached;
}
