/**
 * Sites: what transmits and what listens at each place. Repeaters, mailboxes and digipeaters stand there by
 * themselves; a member who is usually there counts with a set on a mast, on the channels of their check-ins
 * and ladders.
 */
import type { PlanPath } from '../findings/finding.ts';
import type { Member, Plan } from '../plan/model.ts';
import type { Law } from '../regulations/law.ts';
import { type ChannelParticulars, channelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';

export interface SiteStation {
  /** Equal for the parts of one station, which does not disturb itself unless it hears while it sends. */
  readonly key: string;
  /** `Gap repeater`, `Ada Example`. */
  readonly name: string;
  readonly path: PlanPath;
  /** Where what it listens to is written. */
  readonly receivePath: PlanPath;
  readonly receiveHz: number;
  /** Absent: it only listens. */
  readonly transmitHz?: number;
  readonly occupiedHz: number;
  /** Peak deviation of what it sends or hears, as far as its width shows it; 0 for what is not FM. */
  readonly deviationHz: number;
  /** Somebody sits at it, so that it seldom transmits together with another. */
  readonly attended: boolean;
  /** It cannot hear while it sends. */
  readonly simplex: boolean;
}

export interface Site {
  readonly place: string;
  readonly name: string;
  readonly stations: readonly SiteStation[];
}

/** Highest voice frequency, and the upper tone of 1200-baud packet, hertz: what {@link ../radio/emission.ts} reckons widths with. */
export const highestVoiceHz = 3000;
const highestPacketToneHz = 2200;

/** Sites with two stations or more, in the order of the plan's places. */
export function sites(
  plan: Plan,
  law: Law,
  consequences: Pick<Consequences, 'channels' | 'use' | 'checkInsOf' | 'laddersOf'>,
): readonly Site[] {
  const at = new Map<string, SiteStation[]>();
  const add = (place: string | undefined, station: SiteStation): void => {
    if (place === undefined) return;
    const stations = at.get(place) ?? [];
    stations.push(station);
    at.set(place, stations);
  };
  for (const repeater of plan.repeaters.values()) {
    const { id, name, place, inputHz, outputHz, writtenAs } = repeater;
    const outcome = channelParticulars(plan, law, {
      slot: 0,
      name,
      mode: 'fm',
      kind: 'repeater',
      repeater: id,
    });
    if (!outcome.known) continue;
    const path = ['repeaters', id];
    const heard = { receiveHz: inputHz, receivePath: [...path, writtenAs], simplex: inputHz === outputHz };
    add(place, {
      key: id,
      name,
      path,
      ...heard,
      transmitHz: outputHz,
      ...width(outcome.particulars),
      attended: false,
    });
  }
  for (const [section, stations] of [
    ['mailboxes', plan.mailboxes],
    ['digipeaters', plan.digipeaters],
  ] as const) {
    for (const { id, name, place, channel } of stations.values()) {
      const on = consequences.channels.get(channel);
      const path = ['packet', section, id];
      if (on)
        add(place, {
          key: id,
          name,
          path,
          receivePath: [...path, 'channel'],
          ...signal(on),
          attended: false,
        });
    }
  }
  for (const member of plan.members.values()) {
    // Only where something stands by itself: members among themselves hear each other and wait.
    if (member.at === undefined || !at.has(member.at)) continue;
    for (const station of memberStations(plan, consequences, member)) add(member.at, station);
  }
  return [...plan.places.values()].flatMap(({ id, name }) => {
    const stations = at.get(id) ?? [];
    return stations.length > 1 ? [{ place: id, name, stations }] : [];
  });
}

function* memberStations(
  plan: Plan,
  consequences: Pick<Consequences, 'channels' | 'use' | 'checkInsOf' | 'laddersOf'>,
  member: Member,
): Generator<SiteStation> {
  const masts = member.radios.filter((radio) => plan.radios.get(radio)?.antenna.carried === 'mast');
  if (masts.length === 0) return;
  const slots = new Set([
    ...consequences.checkInsOf(member.id).map(({ channel }) => channel),
    ...consequences
      .laddersOf(member.id)
      .flatMap(({ rungs }) => rungs.flatMap(({ channel }) => channel ?? [])),
  ]);
  for (const slot of slots) {
    const on = consequences.channels.get(slot);
    const uses = masts.map((radio) => consequences.use(member.id, radio, slot)?.may ?? 'not held');
    if (!on || uses.every((may) => may === 'not held')) continue;
    const { transmitHz, ...heard } = signal(on);
    yield {
      key: `member ${member.id}`,
      name: member.name,
      path: ['members', member.id, 'at'],
      receivePath: ['members', member.id, 'at'],
      ...heard,
      ...(transmitHz !== undefined && uses.includes('transmit') && { transmitHz }),
      simplex: true,
      attended: true,
    };
  }
}

function signal(on: ChannelParticulars) {
  const { receiveHz, transmitHz } = on;
  return {
    receiveHz,
    ...(transmitHz !== undefined && { transmitHz }),
    ...width(on),
    simplex: transmitHz === undefined || transmitHz === receiveHz,
  };
}

/** Carson's rule the other way round: the deviation that fills the width. */
function width({ occupiedHz, modulation, kind }: ChannelParticulars) {
  const highestHz = kind === 'data' ? highestPacketToneHz : highestVoiceHz;
  const deviationHz = modulation === 'fm' ? Math.max(0, occupiedHz / 2 - highestHz) : 0;
  return { occupiedHz, deviationHz };
}
