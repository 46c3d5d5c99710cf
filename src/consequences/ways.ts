/**
 * Every way by which a member gets through: a rung of one of their ladders, over to one of those it is to
 * reach. A radio rung needs its channel, what that hangs on, and somebody at the other end who may answer on
 * it; a rung without a radio needs the ground they meet on and what the plan says it depends on. Members
 * without a ladder have the channels of their check-ins.
 *
 * Paths are taken as closing wherever the plan names them; what the terrain allows is another table.
 */
import type { Plan, Rung } from '../plan/model.ts';
import type { Consequences } from './consequences.ts';
import { type Hangings, keyOf } from './hangs-on.ts';

export interface RungAt {
  readonly ladder: string;
  /** Place in the ladder, from 0. */
  readonly index: number;
  readonly rung: Rung;
}

export interface Way {
  /** Absent for a check-in. */
  readonly rungAt?: RungAt;
  readonly checkIn?: string;
  readonly radio: boolean;
  /** Keys of the things it needs itself: it lasts until the first of them is lost. */
  readonly needs: readonly string[];
  /** Keys of all things that alone end it, sooner or later: those and what they hang on. */
  readonly ends: ReadonlySet<string>;
}

/** Asked of {@link Consequences}: who may do what is decided there. */
export type Rights = Pick<Consequences, 'best' | 'laddersOf' | 'checkInsOf' | 'membersOf'>;

export function waysOf(plan: Plan, rights: Rights, hangs: Hangings, member: string): readonly Way[] {
  const sends = (id: string, slot: number) => rights.best(id, slot)?.may === 'transmit';
  const wayOf = (needs: readonly string[]) => ({ needs, ends: hangs.endsOf(needs) });
  const ways = rights.laddersOf(member).flatMap((ladder) => {
    const others = rights.membersOf(ladder.reach).filter((id) => id !== member);
    return ladder.rungs.flatMap((rung, index): readonly Way[] => {
      const needs = hangs.rungNeeds(rung);
      if (needs === undefined) return [];
      const rungAt = { ladder: ladder.id, index, rung };
      const slot = rung.channel;
      if (slot === undefined) return [{ rungAt, radio: false, ...wayOf(needs) }];
      if (!sends(member, slot)) return [];
      return others
        .filter((id) => sends(id, slot))
        .map((id) => ({ rungAt, radio: true, ...wayOf([...needs, keyOf('member', id)]) }));
    });
  });
  if (ways.some(({ radio }) => radio)) return ways;
  const checkIns = rights.checkInsOf(member).flatMap(({ id, channel, control }): readonly Way[] => {
    if (!plan.channels.has(channel) || !sends(member, channel)) return [];
    const needs = hangs.channelNeeds(channel);
    const callers = control.filter((other) => other !== member && sends(other, channel));
    if (callers.length === 0) return [{ checkIn: id, radio: true, ...wayOf(needs) }];
    return callers.map((other) => ({
      checkIn: id,
      radio: true,
      ...wayOf([...needs, keyOf('member', other)]),
    }));
  });
  return [...checkIns, ...ways];
}
