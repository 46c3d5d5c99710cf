/** What an old card is still good for, and what makes it dangerous: member by member. */
import type { Consequences } from '../consequences/consequences.ts';
import type { Plan } from '../plan/model.ts';
import type { Change, ChannelChange, Revision } from './compare-revisions.ts';

export type DangerKind =
  | 'slot-means-other'
  | 'slot-gone'
  | 'figures-changed'
  | 'listen-only-now'
  | 'first-call'
  | 'ladder'
  | 'check-in';

export interface Danger {
  readonly kind: DangerKind;
  /** In English, with the figures. */
  readonly text: string;
  /** What it is about: slot and name, or the name of a ladder or a check-in. */
  readonly subject: string;
}

export interface OldCard {
  readonly member: string;
  readonly name: string;
  readonly dangers: readonly Danger[];
  /** Slots of the old card that mean what they meant. */
  readonly validSlots: readonly number[];
  /** Slots the member gains. */
  readonly newSlots: readonly number[];
}

interface Changes {
  readonly channels: readonly ChannelChange[];
  readonly checkIns: readonly Change[];
  readonly ladders: readonly Change[];
}

/** Of members who hold a card of the old revision and are still in the plan. */
export function oldCards(old: Revision, now: Revision, changes: Changes): readonly OldCard[] {
  const bySlot = new Map(changes.channels.map((change) => [change.slot, change]));
  return [...old.plan.members.values()].flatMap((member): OldCard[] => {
    if (!now.plan.members.has(member.id)) return [];
    const held = (consequences: Consequences) =>
      [...consequences.channels.keys()].filter((slot) => {
        const may = consequences.best(member.id, slot)?.may;
        return may !== undefined && may !== 'not held';
      });
    const had = held(old.consequences).toSorted((a, b) => a - b);
    const has = held(now.consequences);
    const dangers: Danger[] = [];
    const validSlots: number[] = [];
    for (const slot of had) {
      const found = dangerOfSlot(slot, bySlot.get(slot), old, now, member.id);
      if (found === undefined) validSlots.push(slot);
      else dangers.push(found);
    }
    dangers.push(...dangersOfCalls(member.id, old, now, changes));
    return [
      {
        member: member.id,
        name: member.name,
        dangers,
        validSlots,
        newSlots: has.filter((slot) => !had.includes(slot)).toSorted((a, b) => a - b),
      },
    ];
  });
}

/** A name or a use that changed is a nuisance; what the radio then does is not. */
const figures: ReadonlySet<string> = new Set(['transmit', 'offset', 'tone', 'receive tone', 'width', 'mode']);

function dangerOfSlot(
  slot: number,
  change: ChannelChange | undefined,
  old: Revision,
  now: Revision,
  member: string,
): Danger | undefined {
  const was = old.plan.channels.get(slot)?.name ?? '';
  const is = now.plan.channels.get(slot)?.name;
  const subject = `${slot} ${is ?? was}`;
  if (is === undefined) return { kind: 'slot-gone', text: `slot ${slot} ${was} is no more`, subject };
  if (change?.meansOther) {
    const receive = change.fields.find(({ field }) => field === 'receive');
    const text =
      was === is
        ? `slot ${slot} ${is} was on ${receive?.was}; it is now on ${receive?.is}`
        : `slot ${slot} was ${was} on ${receive?.was}; it is now ${is} on ${receive?.is}`;
    return { kind: 'slot-means-other', text, subject };
  }
  const [mayWas, mayIs] = [
    old.consequences.best(member, slot)?.may,
    now.consequences.best(member, slot)?.may,
  ];
  if (mayWas === 'transmit' && mayIs !== 'transmit')
    return {
      kind: 'listen-only-now',
      text: `on slot ${slot} ${is} they may no longer transmit`,
      subject,
    };
  const changed = (change?.fields ?? []).filter(({ field }) => figures.has(field));
  if (changed.length === 0) return undefined;
  const what = changed.map(
    ({ field, was: before, is: after }) => `${field} ${before || 'none'} to ${after || 'none'}`,
  );
  return { kind: 'figures-changed', text: `slot ${slot} ${is}: ${what.join(', ')}`, subject };
}

function* dangersOfCalls(member: string, old: Revision, now: Revision, changes: Changes): Generator<Danger> {
  const [was, is] = [firstCall(old, member), firstCall(now, member)];
  if (was !== is)
    yield {
      kind: 'first-call',
      text: `the first call was on ${spoken(old.plan, was)}; it is now on ${spoken(now.plan, is)}`,
      subject: is === undefined ? '' : `${is} ${now.plan.channels.get(is)?.name ?? ''}`.trim(),
    };
  const mine = (ids: readonly { readonly id: string }[]) => new Set(ids.map(({ id }) => id));
  const ladders = [
    mine(old.consequences.laddersOf(member)),
    mine(now.consequences.laddersOf(member)),
  ] as const;
  yield* ofMine(ladders, changes.ladders, 'ladder', 'the ladder');
  const checkIns = [
    mine(old.consequences.checkInsOf(member)),
    mine(now.consequences.checkInsOf(member)),
  ] as const;
  yield* ofMine(checkIns, changes.checkIns, 'check-in', 'the check-in');
}

function* ofMine(
  [had, has]: readonly [ReadonlySet<string>, ReadonlySet<string>],
  changes: readonly Change[],
  kind: DangerKind,
  what: string,
): Generator<Danger> {
  for (const id of had) {
    const change = changes.find((each) => each.id === id);
    const name = change?.name ?? id;
    if (!has.has(id)) yield { kind, text: `${what} "${name}" is theirs no more`, subject: name };
    // Who else is in it changes nothing on this member's card.
    else if (change?.fields.some(({ field }) => field !== 'who'))
      yield {
        kind,
        text: `${what} "${name}" changed: ${change.fields
          .map(({ field }) => field)
          .filter((field) => field !== 'who')
          .join(', ')}`,
        subject: name,
      };
  }
  for (const id of has)
    if (!had.has(id)) {
      const name = changes.find((each) => each.id === id)?.name ?? id;
      yield { kind, text: `${what} "${name}" is new to them`, subject: name };
    }
}

/** The channel of the first rung with one, else of the first check-in, as cards have it. */
function firstCall({ consequences }: Revision, member: string): number | undefined {
  const rung = consequences.laddersOf(member)[0]?.rungs.find(({ channel }) => channel !== undefined);
  return rung?.channel ?? consequences.checkInsOf(member)[0]?.channel;
}

function spoken(plan: Plan, slot: number | undefined): string {
  return slot === undefined ? 'nothing' : `slot ${slot} ${plan.channels.get(slot)?.name ?? ''}`.trim();
}
