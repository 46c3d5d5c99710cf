/**
 * Which radio paths a plan asks for: from each place where a member may be to each repeater, digipeater and mailbox
 * they use, to each member they try to reach without one, and from hop to hop of its packet routes.
 */
import type { Channel, Member, Plan } from '../plan/model.ts';
import type { Consequences } from './consequences.ts';

export type PathEnd =
  | { readonly kind: 'member'; readonly place: string; readonly radio: string }
  | { readonly kind: 'repeater' | 'digipeater' | 'mailbox'; readonly id: string; readonly place: string };

export interface Wanted {
  readonly from: PathEnd;
  readonly to: PathEnd;
  readonly slot: number;
  readonly members: readonly string[];
}

/** Every path the plan asks for, each once, in a fixed order. */
export function wantedPaths(plan: Plan, consequences: Consequences): readonly Wanted[] {
  const found = new Map<string, { from: PathEnd; to: PathEnd; slot: number; members: Set<string> }>();
  const want: Want = (from, to, slot, member) => {
    if (from.place === to.place || !plan.places.has(from.place) || !plan.places.has(to.place)) return;
    const key = [endKey(from), endKey(to), to.kind === 'member' ? slot : ''].join(' ');
    const known = found.get(key) ?? { from, to, slot, members: new Set<string>() };
    if (member !== undefined) known.members.add(member);
    found.set(key, known);
  };
  for (const member of plan.members.values()) {
    for (const place of placesOf(member)) {
      for (const [slot, channel] of plan.channels)
        wantStation(plan, consequences, member, place, slot, channel, want);
    }
    wantPeople(plan, consequences, member, want);
  }
  wantRoutes(plan, consequences, want);
  return [...found.values()]
    .map(({ members, ...rest }) => ({ ...rest, members: [...members] }))
    .toSorted((a, b) => (endKey(a.from) + endKey(a.to) < endKey(b.from) + endKey(b.to) ? -1 : 1));
}

/** Asks for a path; a hop between stations has no member. */
type Want = (from: PathEnd, to: PathEnd, slot: number, member?: string) => void;

export function placesOf(member: Member): readonly string[] {
  return [...new Set([...(member.at === undefined ? [] : [member.at]), ...member.roams])];
}

function endKey(end: PathEnd): string {
  return end.kind === 'member' ? `member ${end.place} ${end.radio}` : `${end.kind} ${end.id}`;
}

function wantStation(
  plan: Plan,
  consequences: Consequences,
  member: Member,
  place: string,
  slot: number,
  channel: Channel,
  want: Want,
): void {
  const repeater = channel.kind === 'repeater' ? plan.repeaters.get(channel.repeater) : undefined;
  const digipeaters =
    channel.mode === 'packet'
      ? [...plan.digipeaters.values()].filter((station) => station.channel === slot)
      : [];
  const mailboxes =
    channel.mode === 'packet'
      ? [...plan.mailboxes.values()].filter((station) => station.channel === slot)
      : [];
  const stations: PathEnd[] = [
    ...(repeater?.place === undefined
      ? []
      : [{ kind: 'repeater' as const, id: repeater.id, place: repeater.place }]),
    ...digipeaters.flatMap(({ id, place: at }) =>
      at === undefined ? [] : [{ kind: 'digipeater' as const, id, place: at }],
    ),
    ...mailboxes.flatMap(({ id, place: at }) =>
      at === undefined ? [] : [{ kind: 'mailbox' as const, id, place: at }],
    ),
  ];
  for (const to of stations) {
    for (const radio of sendersOf(consequences, member, slot))
      want({ kind: 'member', place, radio }, to, slot, member.id);
  }
}

/** Radios with which a member may transmit on a channel. */
function sendersOf(consequences: Consequences, member: Member, slot: number): readonly string[] {
  return member.radios.filter((radio) => consequences.use(member.id, radio, slot)?.may === 'transmit');
}

/** Direct paths: the rungs of a member's ladders and the roll calls they answer, where no repeater stands between. */
function wantPeople(plan: Plan, consequences: Consequences, member: Member, want: Want): void {
  const direct = (slot: number | undefined): slot is number => {
    const channel = slot === undefined ? undefined : plan.channels.get(slot);
    return (
      channel !== undefined &&
      channel.kind !== 'repeater' &&
      channel.kind !== 'listen' &&
      channel.mode !== 'packet'
    );
  };
  const reach = (slot: number, from: readonly string[], others: readonly string[]) => {
    for (const id of others) {
      const other = plan.members.get(id);
      if (!other?.at || other.id === member.id) continue;
      const theirs = other.radios.filter((radio) => consequences.use(id, radio, slot)?.may === 'transmit');
      for (const place of from)
        for (const radio of sendersOf(consequences, member, slot))
          for (const their of theirs) {
            want(
              { kind: 'member', place, radio },
              { kind: 'member', place: other.at, radio: their },
              slot,
              member.id,
            );
          }
    }
  };
  for (const ladder of consequences.laddersOf(member.id)) {
    for (const rung of ladder.rungs) {
      if (direct(rung.channel))
        reach(rung.channel, rung.from === undefined ? placesOf(member) : [rung.from], ladder.reach);
      else if (rung.from !== undefined && rung.channel !== undefined) {
        const channel = plan.channels.get(rung.channel);
        if (channel) wantStation(plan, consequences, member, rung.from, rung.channel, channel, want);
      }
    }
  }
  for (const checkIn of consequences.checkInsOf(member.id)) {
    if (direct(checkIn.channel) && !checkIn.listen && member.at !== undefined)
      reach(checkIn.channel, [member.at], checkIn.control);
  }
}

/** The hops of packet routes: to the first station with any radio that can, then from station to station. */
function wantRoutes(plan: Plan, consequences: Consequences, want: Want): void {
  for (const route of plan.routes) {
    const start = plan.members.get(route.from)?.at ?? route.from;
    const hops: PathEnd[] = [
      ...route.through.flatMap((id) => stationEnd('digipeater', id, plan.digipeaters.get(id)?.place)),
      ...stationEnd('mailbox', route.to, plan.mailboxes.get(route.to)?.place),
    ];
    const slot = plan.mailboxes.get(route.to)?.channel;
    const [first] = hops;
    if (slot === undefined || !first || !consequences.channels.has(slot)) continue;
    for (const member of plan.members.values()) {
      for (const radio of sendersOf(consequences, member, slot))
        want({ kind: 'member', place: start, radio }, first, slot, member.id);
    }
    for (const [index, hop] of hops.entries()) {
      const next = hops[index + 1];
      if (next) want(hop, next, slot);
    }
  }
}

function stationEnd(kind: 'digipeater' | 'mailbox', id: string, place: string | undefined): PathEnd[] {
  return place === undefined ? [] : [{ kind, id, place }];
}
