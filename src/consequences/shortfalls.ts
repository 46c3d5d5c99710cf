/**
 * Who needs which channel, and what stands in the way: a member called in a check-in, calling the roll, or
 * on a ladder must be able to transmit there; a member of a listening watch must be able to hear it.
 */

import type { PlanPath } from '../findings/finding.ts';
import type { Member, Radio } from '../plan/model.ts';
import { serviceById, sourceOf } from '../regulations/law.ts';
import type { ChannelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import { memberKinds } from './member-kinds.ts';
import type { PlanInLaw } from './plan-in-law.ts';
import { refusedSlots } from './planned-signals.ts';
import type { May, Use, UseReason, UseReasonCode } from './use.ts';

export interface Need {
  readonly member: string;
  readonly slot: number;
  readonly transmits: boolean;
  /** What asks for it: `Morning check-in`, and where that is written. */
  readonly because: string;
  readonly at: PlanPath;
  /** Where the member stands as net control on this channel, if anywhere. */
  readonly controlAt?: PlanPath;
}

export interface Shortfall {
  readonly need: Need;
  readonly member: Member;
  readonly on: ChannelParticulars;
  /** Of the member's radios the one that comes nearest. */
  readonly radio: Radio;
  readonly reasons: readonly UseReason[];
  /** What is in the way before all else; a licence goes before a radio. */
  readonly cause: UseReason;
}

/** How far a radio or a member is from what is needed; what is not listed is a matter of licence or law. */
const farness: Partial<Record<UseReasonCode, number>> = {
  'receive-range': 9,
  'transmit-range': 8,
  mode: 7,
  'not-certified': 6,
  memory: 5,
  'receive-step': 4,
  'transmit-step': 4,
  width: 3,
  tone: 3,
  power: 2,
};

const known = new WeakMap<Consequences, readonly Shortfall[]>();

/** Needs that are not met, one a member and channel; channels that nobody may use at all are left to the rules about them. */
export function shortfalls(context: PlanInLaw): readonly Shortfall[] {
  const { plan, consequences } = context;
  const found = known.get(consequences);
  if (found) return found;
  const short = unmetNeeds(context).flatMap((need): Shortfall[] => {
    const member = plan.members.get(need.member);
    const on = consequences.channels.get(need.slot);
    if (!member || !on) return [];
    const nearest = member.radios
      .flatMap((id) => {
        const radio = plan.radios.get(id);
        const use = consequences.use(need.member, id, need.slot);
        return radio && use ? [{ radio, use }] : [];
      })
      // The set that is meant for the service, before one that could be bent to it.
      .toSorted((a, b) => fits(b.radio, on) - fits(a.radio, on) || distance(a.use) - distance(b.use))[0];
    const reasons = nearest?.use.reasons ?? [];
    const cause =
      (need.transmits ? withoutLicence(context, member, on) : undefined) ??
      reasons.find(({ code }) => farness[code] === undefined) ??
      reasons.toSorted((a, b) => (farness[b.code] ?? 0) - (farness[a.code] ?? 0))[0];
    return nearest && cause ? [{ need, member, on, radio: nearest.radio, reasons, cause }] : [];
  });
  known.set(consequences, short);
  return short;
}

type Meets = (member: string, transmits: boolean) => boolean;

/** Whether members can do what is asked of them on a channel. Thousands of members are a few kinds: each kind is asked once. */
function meeting(context: PlanInLaw): (slot: number) => Meets {
  const { consequences } = context;
  const refused = refusedSlots(context);
  const kinds = memberKinds(context);
  const kindOf = new Map(kinds.flatMap((kind, index) => kind.map(({ id }) => [id, index] as const)));
  // Whose radios hold no channel at all is found by name, not channel by channel.
  const equipped = kinds.map(([{ radios }]) =>
    radios.some((radio) => consequences.slotsOf(radio).length > 0),
  );
  const asked = new Map<number, Meets>();
  const at = (slot: number): Meets => {
    const on = consequences.channels.get(slot);
    if (!on || refused.has(slot) || lacksLeave(context, on)) return () => true;
    const answers: (May | undefined)[] = [];
    return (member, transmits) => {
      const kind = kindOf.get(member);
      if (kind === undefined || !equipped[kind]) return true;
      answers[kind] ??= consequences.best(member, slot)?.may ?? 'transmit';
      return answers[kind] === 'transmit' || (!transmits && answers[kind] === 'listen only');
    };
  };
  return (slot) => {
    const before = asked.get(slot) ?? at(slot);
    asked.set(slot, before);
    return before;
  };
}

/** 1 for a radio that is for one of the channel's services. */
function fits(radio: Radio, on: ChannelParticulars): number {
  return on.services.some((service) => radio.certified.includes(service)) ? 1 : 0;
}

/** What the table leaves open for a radio that cannot hold the channel: a member who has no licence needs one before a radio. */
function withoutLicence({ law }: PlanInLaw, member: Member, on: ChannelParticulars): UseReason | undefined {
  const services = on.services.flatMap((id) => serviceById(law, id) ?? []);
  const [first] = services;
  if (!first || on.transmitHz === undefined) return undefined;
  if (
    services.some(({ id, licence }) => licence === 'none' || licence === 'never' || member.licences.has(id))
  )
    return undefined;
  return {
    code: 'unlicensed',
    text: `holds no licence for ${first.name}; ${first.mustHold}`,
    source: sourceOf(law, first),
  };
}

function distance(use: Use): number {
  return Math.max(...use.reasons.map(({ code }) => farness[code] ?? 1));
}

/**
 * Those that a member cannot meet. One a member and channel; of several that ask the same, a turn as net control first,
 * then transmitting, then the earlier.
 */
function unmetNeeds(context: PlanInLaw): readonly Need[] {
  const { plan, consequences } = context;
  const meetsOn = meeting(context);
  const all = new Map<string, Need>();
  const add = (need: Need) => {
    const key = `${need.member} ${need.slot}`;
    const before = all.get(key);
    if (!before || weight(need) > weight(before)) all.set(key, need);
  };
  const addAll = (members: readonly string[], asked: Omit<Need, 'member' | 'controlAt'>) => {
    const meets = meetsOn(asked.slot);
    for (const member of members) if (!meets(member, asked.transmits)) add({ ...asked, member });
  };
  // Voice on a packet channel is found as that; nobody needs such a channel to speak on.
  const isPacket = (slot: number) => plan.channels.get(slot)?.mode === 'packet';
  for (const { id, name, channel: slot, listen, who, control } of plan.checkIns.values()) {
    if (isPacket(slot)) continue;
    const asked = { slot, because: name, at: ['check-ins', id, 'channel'], transmits: !listen };
    const meets = meetsOn(slot);
    for (const [index, member] of listen ? [] : control.entries())
      if (!meets(member, true)) add({ ...asked, member, controlAt: ['check-ins', id, 'control', index] });
    addAll(consequences.membersOf(who), asked);
  }
  for (const { id, name, who, rungs } of plan.ladders.values()) {
    for (const [index, { channel: slot, mailbox }] of rungs.entries()) {
      if (slot === undefined || (mailbox === undefined && isPacket(slot))) continue;
      const at = ['fallbacks', id, 'rungs', index, 'channel'];
      addAll(consequences.membersOf(who), { slot, because: name, at, transmits: true });
    }
  }
  return [...all.values()];
}

function weight({ transmits, controlAt }: Need): number {
  return (controlAt ? 2 : 0) + (transmits ? 1 : 0);
}

/** Whether a channel needs an agency's leave that nobody in the plan has: then the channel is wrong, and not its users. */
export function lacksLeave({ plan, law }: PlanInLaw, { services }: ChannelParticulars): boolean {
  return (
    services.length > 0 &&
    services.every(
      (id) =>
        serviceById(law, id)?.licence === 'authority' &&
        ![...plan.members.values()].some(({ licences }) => licences.get(id)?.authority !== undefined),
    )
  );
}
