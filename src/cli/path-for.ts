/** What a user means by "to this station": which end of a path, over which channel, with which kind of radio. */
import type { Consequences } from '../consequences/consequences.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import { nearest } from '../findings/nearest.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';

export interface PathChoice {
  readonly radio?: string;
  /** A slot, as typed. */
  readonly channel?: string;
}

/**
 * The channel, the kind of radio and who holds it. Without a choice: the first channel that leads there and, since
 * whoever walks carries one, a hand-held before anything else.
 * @throws {Refusal} where nobody may transmit so
 */
export function pathFor(
  plan: Plan,
  consequences: Consequences,
  to: string,
  choice: PathChoice,
): { radio: string; slot: number; members: readonly string[] } {
  const end = endOfPlan(plan, to, '');
  if (choice.radio !== undefined && !plan.radios.has(choice.radio))
    throw unknownId('radio', choice.radio, plan.radios.keys());
  if (choice.channel !== undefined && !consequences.channels.has(Number(choice.channel))) {
    throw new Refusal(
      `There is no channel in slot ${choice.channel}.`,
      `Slots are ${[...consequences.channels.keys()].join(', ')}.`,
    );
  }
  const slots = choice.channel === undefined ? slotsTo(plan, consequences, end) : [Number(choice.channel)];
  const ways = slots.flatMap((slot) =>
    [...plan.radios.values()]
      .filter(({ id }) => choice.radio === undefined || id === choice.radio)
      .flatMap(({ id, antenna }) => {
        const members = consequences
          .holdersOf(id)
          .filter((member) => consequences.use(member, id, slot)?.may === 'transmit');
        return members.length === 0
          ? []
          : [{ slot, radio: id, members, byHand: !['vehicle', 'mast'].includes(antenna.carried ?? 'hand') }];
      }),
  );
  const found = ways.find(({ byHand }) => byHand) ?? ways[0];
  if (found) return found;
  throw new Refusal(
    `Nobody in this plan may transmit ${choice.radio === undefined ? '' : `with ${choice.radio} `}on a channel that leads to ${to}.`,
    'Name the channel with --channel and the radio with --radio.',
  );
}

/** @throws {Refusal} for an id that is no station, member or place, or that stands nowhere */
export function endOfPlan(plan: Plan, id: string, radio: string): PathEnd {
  for (const [kind, stations] of [
    ['repeater', plan.repeaters],
    ['mailbox', plan.mailboxes],
    ['digipeater', plan.digipeaters],
  ] as const) {
    const station = stations.get(id);
    if (!station) continue;
    if (station.place === undefined)
      throw new Refusal(`The plan does not say where ${station.name} stands.`, 'Give it a place.');
    return { kind, id, place: station.place };
  }
  const member = plan.members.get(id);
  if (member && member.at === undefined)
    throw new Refusal(
      `The plan does not say where ${member.name} usually is.`,
      'Give them a place with `at`.',
    );
  const place = member?.at ?? (plan.places.has(id) ? id : undefined);
  if (place !== undefined) return { kind: 'member', place, radio };
  const known = [plan.repeaters, plan.mailboxes, plan.digipeaters, plan.members, plan.places].flatMap(
    (entries) => [...entries.keys()],
  );
  throw unknownId('station, member or place', id, known);
}

export function unknownId(noun: string, id: string, known: Iterable<string>): Refusal {
  const near = nearest(id, known);
  return new Refusal(
    `There is no ${noun} ${id} in this plan.`,
    near ? `Did you mean ${near}?` : 'Ids are those of the plan file.',
  );
}

function slotsTo(plan: Plan, consequences: Consequences, to: PathEnd): readonly number[] {
  return [...consequences.channels.values()]
    .filter(({ repeater, mode, slot, transmitHz }) => {
      if (to.kind === 'repeater') return repeater?.id === to.id;
      if (to.kind === 'mailbox') return plan.mailboxes.get(to.id)?.channel === slot;
      if (to.kind === 'digipeater') return plan.digipeaters.get(to.id)?.channel === slot;
      return repeater === undefined && mode !== 'packet' && transmitHz !== undefined;
    })
    .map(({ slot }) => slot);
}
