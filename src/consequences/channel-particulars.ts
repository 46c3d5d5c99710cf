/**
 * Channel particulars: receive and transmit frequency, offset, tones, spacing, emission and the services a
 * channel may belong to, worked out once from its repeater, its published channel or its own figures.
 */
import { entry } from '../plan/entry.ts';
import type { Channel, Mode, Plan, Repeater } from '../plan/model.ts';
import { type Emission, formatEmission, usualEmission, widestSpacingHz } from '../radio/emission.ts';
import type { Tone } from '../radio/tone.ts';
import { bandPlanAt } from '../regulations/band-plan.ts';
import { channelByName, channelsOfPair, channelsSentOn } from '../regulations/channels.ts';
import type { ChannelRow, EmissionKind, Modulation } from '../regulations/country.ts';
import { type Law, serviceById } from '../regulations/law.ts';
import { serviceOf } from '../regulations/service-of.ts';
import { widthLimit } from '../regulations/width-limit.ts';

export type OffsetDirection = 'none' | 'minus' | 'plus';

export interface ChannelParticulars {
  readonly slot: number;
  readonly name: string;
  readonly channel: Channel;
  readonly receiveHz: number;
  /** Absent: listen only. */
  readonly transmitHz?: number;
  /** Transmit as a radio's menu asks for it: a direction and a size without a sign. */
  readonly direction: OffsetDirection;
  readonly offsetHz: number;
  /** Sent when transmitting. */
  readonly tone?: Tone;
  /** Needed to open the squelch when receiving. */
  readonly receiveTone?: Tone;
  /** Channel spacing. */
  readonly spacingHz: number;
  /** Whether the plan states the spacing or it follows from the rules. */
  readonly spacingWritten: boolean;
  readonly mode: Mode;
  readonly kind: EmissionKind;
  readonly modulation?: Modulation;
  /** For single sideband, the side of the dial's frequency on which the signal lies. */
  readonly sideband?: 'upper' | 'lower';
  /** Room the signal takes. */
  readonly occupiedHz: number;
  /** `16K0F3E` */
  readonly emission: string;
  /** Services in which it may be sent, the likeliest first; for a channel only listened to, the service it is heard in. */
  readonly services: readonly string[];
  readonly published?: ChannelRow;
  readonly repeater?: Repeater;
  /** Services of which it is a published channel for certified sets: a set of one has its frequency and width built in. */
  readonly builtIn: readonly string[];
}

/** What a channel leads to, or why that cannot be known: it names a repeater or a published channel that is not there. */
export type ChannelOutcome =
  | { readonly known: true; readonly particulars: ChannelParticulars }
  | {
      readonly known: false;
      readonly missing: 'repeater' | 'standard';
      readonly name: string;
      readonly nearest: readonly string[];
    };

export function channelParticulars(plan: Plan, law: Law, channel: Channel): ChannelOutcome {
  switch (channel.kind) {
    case 'repeater': {
      const repeater = plan.repeaters.get(channel.repeater);
      if (!repeater)
        return {
          known: false,
          missing: 'repeater',
          name: channel.repeater,
          nearest: [...plan.repeaters.keys()],
        };
      return known(plan, law, channel, repeater.outputHz, repeater.inputHz, { repeater });
    }
    case 'standard': {
      const search = channelByName(law, channel.standard);
      if (!search.found)
        return { known: false, missing: 'standard', name: channel.standard, nearest: search.nearest };
      const { channel: published } = search;
      return known(plan, law, channel, published.receiveHz, published.transmitHz, { published });
    }
    case 'simplex':
      return known(plan, law, channel, channel.frequencyHz, channel.frequencyHz, {});
    case 'listen':
      return known(plan, law, channel, channel.frequencyHz, undefined, {});
    case 'split':
      return known(plan, law, channel, channel.receiveHz, channel.transmitHz, {});
  }
}

interface Origin {
  readonly repeater?: Repeater;
  readonly published?: ChannelRow;
}

function known(
  plan: Plan,
  law: Law,
  channel: Channel,
  receiveHz: number,
  transmitHz: number | undefined,
  origin: Origin,
): ChannelOutcome {
  const { repeater, published } = origin;
  const services = servicesOf(law, channel, receiveHz, transmitHz, origin);
  const written = channel.widthHz ?? repeater?.widthHz;
  const spacingHz =
    written ??
    usualSpacingHz(law, channel.mode, transmitHz ?? receiveHz, equippedFor(plan, services), published);
  const emission = emissionOf(channel.mode, spacingHz);
  const tone = channel.tone ?? repeater?.tone ?? publishedTone(published);
  const receiveTone = channel.receiveTone ?? repeater?.outputTone;
  const shiftHz = transmitHz === undefined ? 0 : transmitHz - receiveHz;
  return {
    known: true,
    particulars: entry<ChannelParticulars>({
      slot: channel.slot,
      name: channel.name,
      channel,
      receiveHz,
      transmitHz,
      direction: shiftHz < 0 ? 'minus' : shiftHz > 0 ? 'plus' : 'none',
      offsetHz: Math.abs(shiftHz),
      tone: transmitHz === undefined ? undefined : tone,
      receiveTone,
      spacingHz,
      spacingWritten: written !== undefined,
      mode: channel.mode,
      kind: kindOf(channel.mode),
      modulation: modulationOf(channel.mode),
      sideband: channel.mode === 'ssb' ? sidebandAt(transmitHz ?? receiveHz) : undefined,
      occupiedHz: emission.bandwidthHz,
      emission: formatEmission(emission),
      services,
      published,
      repeater,
      builtIn: builtIn(law, services, receiveHz, transmitHz),
    }),
  };
}

function builtIn(
  law: Law,
  services: readonly string[],
  receiveHz: number,
  transmitHz: number | undefined,
): readonly string[] {
  const rows = channelsOfPair(law, receiveHz, transmitHz);
  if (rows.length === 0) return none;
  return services.filter(
    (id) => rows.some(({ service }) => service === id) && serviceById(law, id)?.certifiedEquipment === true,
  );
}

const none: readonly string[] = [];

function servicesOf(
  law: Law,
  channel: Channel,
  receiveHz: number,
  transmitHz: number | undefined,
  { repeater, published }: Origin,
): readonly string[] {
  const stated = channel.service ?? repeater?.service;
  if (stated !== undefined) return [stated];
  const found = serviceOf(law, receiveHz, transmitHz);
  if (!published) return found;
  const shared = new Set(channelsOfPair(law, receiveHz, transmitHz).map((row) => row.service));
  return [
    published.service,
    ...found.filter((service) => service !== published.service && shared.has(service)),
  ];
}

/**
 * Of services that share a channel, those that a radio of the group is for, or else the first: where families with
 * sets of both services meet, they meet at the spacing of the narrower.
 */
function equippedFor(plan: Plan, services: readonly string[]): readonly string[] {
  if (services.length < 2) return services;
  const radios = [...plan.radios.values()];
  const equipped = services.filter((service) => radios.some(({ certified }) => certified.includes(service)));
  return equipped.length > 0 ? equipped : services.slice(0, 1);
}

/** The widest spacing in common use whose signal fits what the law and the band plan allow there, in each of the services. */
function usualSpacingHz(
  law: Law,
  mode: Mode,
  frequencyHz: number,
  services: readonly string[],
  published: ChannelRow | undefined,
): number {
  // AM, single sideband and Morse are as wide at any spacing, and stand on the channels that FM has.
  const asked = { frequencyHz, kind: kindOf(mode), modulation: 'fm' } as const;
  const lawful = services.map((service) => widthLimit(law, { ...asked, service })?.maxWidthHz ?? Infinity);
  const planned = bandPlanAt(law, frequencyHz).find((row) => row.maxWidthHz !== undefined)?.maxWidthHz;
  const usual = channelsSentOn(law, frequencyHz)
    .filter(({ service }) => services.includes(service))
    .map(({ usualWidthHz }) => usualWidthHz ?? Infinity);
  const limitHz = Math.min(...lawful, ...usual, planned ?? Infinity, published?.maxWidthHz ?? Infinity);
  const signal = mode === 'packet' ? 'packet' : 'fm';
  return widestSpacingHz(signal, limitHz) ?? 12_500;
}

/** Designators usual for AM voice, single sideband and Morse by hand (common practice; ITU RR Appendix 1 for the notation). */
const otherEmissions: Readonly<Record<'am' | 'ssb' | 'cw', Emission>> = {
  am: { bandwidthHz: 6000, modulation: 'A', signal: '3', information: 'E' },
  ssb: { bandwidthHz: 2800, modulation: 'J', signal: '3', information: 'E' },
  cw: { bandwidthHz: 150, modulation: 'A', signal: '1', information: 'A' },
};

function emissionOf(mode: Mode, spacingHz: number): Emission {
  if (mode === 'am' || mode === 'ssb' || mode === 'cw') return otherEmissions[mode];
  const usual = usualEmission(mode, spacingHz);
  if (usual) return usual;
  // A spacing without a custom of its own: taken as filled to the width of the nearest narrower one that radios of VHF have.
  const narrower = [25_000, 20_000, 12_500].find((spacing) => spacing <= spacingHz) ?? 12_500;
  return usualEmission(mode, narrower) ?? otherEmissions.am;
}

/** Lower below 10 MHz and upper above, but upper on 60 m (common practice; 47 CFR 97.307(f)(14) for 60 m). */
function sidebandAt(frequencyHz: number): 'upper' | 'lower' {
  const sixtyMetres = frequencyHz >= 5_000_000 && frequencyHz <= 5_500_000;
  return frequencyHz < 10_000_000 && !sixtyMetres ? 'lower' : 'upper';
}

function kindOf(mode: Mode): EmissionKind {
  return mode === 'packet' ? 'data' : mode === 'cw' ? 'cw' : 'phone';
}

function modulationOf(mode: Mode): Modulation | undefined {
  return mode === 'cw' ? undefined : mode === 'packet' ? 'fm' : mode;
}

function publishedTone(published: ChannelRow | undefined): Tone | undefined {
  // A tone that is only custom is for the plan to choose; interoperability channels cannot be worked without theirs.
  return published?.toneHz !== undefined && published.roleOnly
    ? { kind: 'ctcss', tenthsHz: Math.round(published.toneHz * 10) }
    : undefined;
}
