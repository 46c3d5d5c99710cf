/**
 * How long a message takes over each packet route of a plan, and how many fit into the time the plan gives to
 * packet. The routes are those written as routes and those of ladders' rungs, each once.
 */

import { sharedCapacity } from '../airtime/aloha.ts';
import type { StationAddress } from '../airtime/ax25-frame.ts';
import { type MessageTime, messageTime } from '../airtime/message-time.ts';
import { type Modem, usualModem } from '../airtime/modem.ts';
import type { Plan } from '../plan/model.ts';
import { parsePacketAddress } from '../radio/packet-address.ts';

export interface PacketWindow {
  /** The check-in whose time it is; absent for the hour that is taken where no check-in is on the channel. */
  readonly checkIn?: string;
  readonly lengthMin: number;
  /** Messages, one after another, if nothing is lost and nobody else sends. */
  readonly alone: number;
  /** Messages at best from stations that do not hear each other (ALOHA, 18.4 % of the time). */
  readonly shared: number;
}

export interface PacketTime {
  readonly mailbox: string;
  readonly through: readonly string[];
  readonly slot: number;
  /** Places it is written from; empty for a route that only a ladder names. */
  readonly fromPlaces: readonly string[];
  readonly ladders: readonly string[];
  readonly time: MessageTime;
  readonly windows: readonly PacketWindow[];
}

export interface PacketTimes {
  readonly characters: number;
  readonly modem: Modem;
  readonly routes: readonly PacketTime[];
}

/** @param characters of plain text, one octet each */
export function packetTimes(plan: Plan, characters: number, modem: Modem = usualModem): PacketTimes {
  const routes = new Map<
    string,
    { mailbox: string; through: readonly string[]; from: string[]; ladders: string[] }
  >();
  const route = (mailbox: string, through: readonly string[]) => {
    const key = [mailbox, ...through].join(' ');
    const known = routes.get(key) ?? { mailbox, through, from: [], ladders: [] };
    routes.set(key, known);
    return known;
  };
  for (const { from, to, through } of plan.routes) route(to, through).from.push(from);
  for (const { id, rungs } of plan.ladders.values()) {
    for (const { mailbox, through } of rungs)
      if (mailbox !== undefined) route(mailbox, through).ladders.push(id);
  }
  return {
    characters,
    modem,
    routes: [...routes.values()].flatMap(({ mailbox: id, through, from, ladders }) => {
      const mailbox = plan.mailboxes.get(id);
      const addresses = through.map((each) => addressOf(plan.digipeaters.get(each)?.call));
      const to = addressOf(mailbox?.call);
      if (!mailbox || !to || addresses.some((address) => address === undefined)) return [];
      const path = { from: longestCall, to, through: addresses.flatMap((address) => address ?? []) };
      const time = messageTime(path, characters, modem);
      return [
        {
          mailbox: id,
          through,
          slot: mailbox.channel,
          fromPlaces: [...new Set(from)],
          ladders: [...new Set(ladders)],
          time,
          windows: windowsOf(plan, mailbox.channel, time),
        },
      ];
    }),
  };
}

/** Frames are equally long for every sender; which bits their call signs have moves a message by milliseconds. */
const longestCall: StationAddress = { callSign: 'AA9XXX', ssid: 0 };

function addressOf(call: string | undefined): StationAddress | undefined {
  const reading = call === undefined ? undefined : parsePacketAddress(call);
  return reading?.ok ? reading.value : undefined;
}

function windowsOf(plan: Plan, slot: number, time: MessageTime): readonly PacketWindow[] {
  const checkIns = [...plan.checkIns.values()].filter(({ channel }) => channel === slot);
  const given = checkIns.map(({ id, lastsMin }) => ({ checkIn: id, lengthMin: lastsMin }));
  return (given.length > 0 ? given : [{ lengthMin: 60 }]).map((window) => ({
    ...window,
    alone: Math.floor((window.lengthMin * 60) / time.totalS),
    shared: sharedCapacity(window.lengthMin * 60, time.channelS),
  }));
}
