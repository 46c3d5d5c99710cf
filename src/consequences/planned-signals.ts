/**
 * Every signal a plan means to put on the air, with what the rules of the country say to it whoever sends
 * it: each repeater's output and input, each channel with figures of its own, each packet station. Asked by
 * the rules about frequencies, so that a frequency that is wrong is found once, where it is written.
 */

import type { PlanPath } from '../findings/finding.ts';
import type { Channel, PacketStation, Plan, Repeater } from '../plan/model.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import type { Span, StationKind } from '../regulations/country.ts';
import type { Law } from '../regulations/law.ts';
import { mayTransmit, type TransmitAnswer } from '../regulations/may-transmit.ts';
import { serviceOf } from '../regulations/service-of.ts';
import { occupiedSpan } from '../regulations/signal.ts';
import { type ChannelParticulars, channelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import type { PlanInLaw } from './plan-in-law.ts';

interface SignalBasics {
  /** Where its frequency is written. */
  readonly at: PlanPath;
  /** How a sentence calls it: `Gap repeater`, `SIMP 1`. */
  readonly name: string;
  readonly frequencyHz: number;
  readonly occupied: Span;
  readonly on: ChannelParticulars;
  /** Services it may belong to, the likeliest first; empty where no service has the frequency. */
  readonly services: readonly string[];
  /** Whether it may be sent by somebody: the class of the operator, leave and place are asked elsewhere. */
  readonly answer: TransmitAnswer;
  /** The other end of the same repeater is refused already: what is wrong here follows from that. */
  readonly overshadowed: boolean;
}

export type PlannedSignal = SignalBasics &
  (
    | { readonly part: 'output' | 'input'; readonly repeater: Repeater }
    | { readonly part: 'channel' }
    | { readonly part: 'packet station'; readonly station: PacketStation; readonly digipeater: boolean }
  );

const known = new WeakMap<Consequences, readonly PlannedSignal[]>();

export function plannedSignals(asked: PlanInLaw): readonly PlannedSignal[] {
  const found = known.get(asked.consequences);
  if (found) return found;
  const signals = [
    ...repeaterSignals(asked.plan, asked.law),
    ...channelSignals(asked.law, asked.consequences),
    ...packetSignals(asked.plan, asked.law, asked.consequences),
  ];
  known.set(asked.consequences, signals);
  return signals;
}

/** Slots whose frequency the rules refuse to everybody, on either side of a repeater. */
export function refusedSlots(asked: PlanInLaw): ReadonlySet<number> {
  const refused = plannedSignals(asked).filter((signal) => !signal.answer.may);
  const repeaters = new Set(
    refused.flatMap((signal) =>
      signal.part === 'output' || signal.part === 'input' ? [signal.repeater.id] : [],
    ),
  );
  const slots = refused.flatMap((signal) => (signal.part === 'channel' ? [signal.on.slot] : []));
  for (const on of asked.consequences.channels.values()) {
    if (on.repeater && repeaters.has(on.repeater.id)) slots.push(on.slot);
  }
  return new Set(slots);
}

/** Where the frequency that a channel sends on is written. */
export function transmitPath(channel: Channel): PlanPath {
  const key = channel.kind === 'split' ? 'transmit' : channel.kind;
  return ['channels', channel.slot, key];
}

/** Where the input of a repeater is written. */
export function inputPath(repeater: Repeater): PlanPath {
  return ['repeaters', repeater.id, repeater.writtenAs];
}

const services = new WeakMap<Repeater, { readonly law: Law; readonly found: readonly string[] }>();

/**
 * The services a repeater may belong to, by what is sent at either end of it: those that have both ends. Where none
 * has, those of the output, on which everybody listens: then the input is what went wrong.
 */
export function repeaterServices(law: Law, repeater: Repeater): readonly string[] {
  const before = services.get(repeater);
  if (before?.law === law) return before.found;
  const found = findServices(law, repeater);
  services.set(repeater, { law, found });
  return found;
}

function findServices(law: Law, repeater: Repeater): readonly string[] {
  if (repeater.service !== undefined) return [repeater.service];
  const { outputHz, inputHz } = repeater;
  const atOutput = serviceOf(law, outputHz, outputHz);
  const atInput = serviceOf(law, inputHz, inputHz);
  const both = atOutput.filter((service) => atInput.includes(service));
  return both.length > 0 ? both : atOutput.length > 0 ? atOutput : atInput;
}

function* repeaterSignals(plan: Plan, law: Law): Generator<PlannedSignal> {
  for (const repeater of plan.repeaters.values()) {
    const { id, name } = repeater;
    const outcome = channelParticulars(plan, law, {
      slot: 0,
      name,
      mode: 'fm',
      kind: 'repeater',
      repeater: id,
    });
    if (!outcome.known) continue;
    const on = outcome.particulars;
    const services = repeaterServices(law, repeater);
    const at = ['repeaters', id, 'output'];
    const output = signal(law, on, at, name, repeater.outputHz, services, 'repeater');
    yield { ...output, part: 'output', repeater };
    yield {
      ...signal(law, on, inputPath(repeater), name, repeater.inputHz, services),
      overshadowed: !output.answer.may,
      part: 'input',
      repeater,
    };
  }
}

function* channelSignals(law: Law, consequences: Consequences): Generator<PlannedSignal> {
  for (const on of consequences.channels.values()) {
    const { channel, name, transmitHz } = on;
    if (transmitHz === undefined) continue;
    // What a repeater's channel sends is the repeater's input, unless the channel says otherwise of its kind.
    if (channel.kind === 'repeater' && channel.widthHz === undefined && channel.mode === 'fm') continue;
    yield { ...signal(law, on, transmitPath(channel), name, transmitHz, on.services), part: 'channel' };
  }
}

function* packetSignals(plan: Plan, law: Law, consequences: Consequences): Generator<PlannedSignal> {
  for (const [section, stations] of [
    ['digipeaters', plan.digipeaters],
    ['mailboxes', plan.mailboxes],
  ] as const) {
    for (const station of stations.values()) {
      const on = consequences.channels.get(station.channel);
      if (on?.transmitHz === undefined) continue;
      const at = ['packet', section, station.id, 'channel'];
      yield {
        ...signal(law, on, at, station.name, on.transmitHz, on.services, 'digipeater'),
        part: 'packet station',
        station,
        digipeater: section === 'digipeaters',
      };
    }
  }
}

function signal(
  law: Law,
  on: ChannelParticulars,
  at: PlanPath,
  name: string,
  frequencyHz: number,
  services: readonly string[],
  station?: StationKind,
): SignalBasics {
  const carried = {
    frequencyHz,
    widthHz: on.occupiedHz,
    ...(on.sideband && { sideband: on.sideband }),
  };
  const answers = services.map((service) =>
    mayTransmit(law, {
      ...carried,
      service,
      kind: on.kind,
      ...(on.modulation && { modulation: on.modulation }),
      ...(station && { station }),
      authorised: true,
    }),
  );
  const answer: TransmitAnswer = answers.find(({ may }) => may) ??
    answers.find((refusal) => !refusal.may && refusal.why !== 'outside') ??
    answers[0] ?? {
      may: false,
      why: 'outside',
      text: `${formatFrequency(frequencyHz)} MHz lies in no service that a group may use (rules: ${law.country.name})`,
    };
  return {
    at,
    name,
    frequencyHz,
    occupied: occupiedSpan(carried),
    on,
    services,
    answer,
    overshadowed: false,
  };
}
