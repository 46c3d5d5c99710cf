/**
 * Single slips in a legal plan, each of a kind that coordinators make. A slip that the plan has no place for
 * gives nothing.
 */
import type { WrittenPlan } from './legal-plan.ts';

export interface Mutation {
  readonly kind: string;
  /** The least share of such slips that must be found. What is missed is legal as well, and as likely. */
  readonly floor: number;
  /** Changes a copy of the plan; false where it has no place for the slip. @param pick any whole number */
  mutate(plan: WrittenPlan, pick: number): boolean;
}

export const mutations: readonly Mutation[] = [
  slip('the sign of an offset turned round', 0.85, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    if (!repeater) return false;
    repeater.offset = repeater.offset.startsWith('-') ? repeater.offset.slice(1) : `-${repeater.offset}`;
    return true;
  }),
  slip('the decimal point of an offset one place off', 0.99, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    if (!repeater) return false;
    repeater.offset = String(Number(repeater.offset) * (pick % 2 === 0 ? 10 : 0.1));
    return true;
  }),
  slip('output and input exchanged', 0.6, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    if (!repeater) return false;
    repeater.output = (Number(repeater.output) + Number(repeater.offset)).toFixed(5);
    repeater.offset = String(-Number(repeater.offset));
    return true;
  }),
  slip('the tone of a repeater left out', 0.99, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    if (!repeater) return false;
    delete repeater.tone;
    return true;
  }),
  slip('two figures of a tone exchanged', 0.99, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    const swapped = repeater?.tone && exchanged(repeater.tone, pick);
    if (!repeater || !swapped) return false;
    repeater.tone = swapped;
    return true;
  }),
  slip('a repeater 1 MHz off', 0.45, (plan, pick) => {
    const repeater = oneOf(Object.values(plan.repeaters), pick);
    if (!repeater) return false;
    repeater.output = (Number(repeater.output) + (pick % 2 === 0 ? 1 : -1)).toFixed(5);
    return true;
  }),
  slip('a simplex channel 1 MHz off', 0.7, (plan, pick) => {
    const channel = oneOf(
      Object.values(plan.channels).filter(({ simplex }) => simplex !== undefined),
      pick,
    );
    if (!channel) return false;
    channel.simplex = (Number(channel.simplex) + (pick % 2 === 0 ? 1 : -1)).toFixed(5);
    return true;
  }),
  slip('two figures of a frequency exchanged', 0.8, (plan, pick) => {
    const places = [
      ...Object.values(plan.repeaters).map((repeater) => ({ entry: repeater, key: 'output' as const })),
      ...Object.values(plan.channels)
        .filter(({ simplex }) => simplex !== undefined)
        .map((channel) => ({ entry: channel, key: 'simplex' as const })),
    ];
    const place = oneOf(places, pick);
    const entry = place?.entry as { output?: string; simplex?: string } | undefined;
    const swapped = place && exchanged(entry?.[place.key] ?? '', pick);
    if (!place || !entry || !swapped) return false;
    entry[place.key] = swapped;
    return true;
  }),
  slip('a radio certified for another service', 0.99, (plan, pick) => {
    const radio = oneOf(Object.values(plan.radios), pick);
    if (!radio) return false;
    radio.certified = radio.certified.includes('amateur') ? ['marine'] : ['amateur'];
    return true;
  }),
  slip('a licence for another service', 0.9, (plan, pick) => {
    const member = oneOf(Object.values(plan.members), pick);
    const licence = member?.licences['amateur'];
    if (!member || !licence) return false;
    delete member.licences['amateur'];
    member.licences['cb'] = licence;
    return true;
  }),
  slip('a licence that has ended', 0.99, (plan, pick) => {
    const licence = oneOf(
      Object.values(plan.members).flatMap(({ licences }) => Object.values(licences)),
      pick,
    );
    if (!licence) return false;
    licence.expires = '2025-03-31';
    return true;
  }),
  slip('a class that does not exist', 0.99, (plan, pick) => {
    const licence = oneOf(Object.values(plan.members), pick)?.licences['amateur'];
    if (licence?.class === undefined) return false;
    licence.class = `${licence.class}x`;
    return true;
  }),
  slip('a spacing of 50 kHz', 0.99, (plan, pick) => {
    const channel = oneOf(
      Object.values(plan.channels).filter(({ simplex, standard }) => simplex ?? standard),
      pick,
    );
    if (!channel) return false;
    channel.width = 50;
    return true;
  }),
  slip('a published channel that is none', 0.99, (plan, pick) => {
    const channel = oneOf(
      Object.values(plan.channels).filter(({ standard }) => standard !== undefined),
      pick,
    );
    if (!channel) return false;
    channel.standard = `${channel.standard}9`;
    return true;
  }),
  slip('a hundred times the power', 0.99, (plan, pick) => {
    const radio = oneOf(
      Object.values(plan.radios).filter(({ certified }) => !certified.includes('amateur')),
      pick,
    );
    if (!radio) return false;
    radio.powers = { only: '50 W' };
    return true;
  }),
  slip('a check-in on a slot that is empty', 0.99, (plan, pick) => {
    const checkIn = oneOf(Object.values(plan.checkIns), pick);
    if (!checkIn) return false;
    checkIn.channel = 97;
    return true;
  }),
  slip('a channel copied to another slot', 0.99, (plan, pick) => {
    const channel = oneOf(Object.values(plan.channels), pick);
    if (!channel) return false;
    plan.channels[96] = structuredClone(channel);
    return true;
  }),
  slip('a member without a radio', 0.99, (plan, pick) => {
    const member = oneOf(Object.values(plan.members), pick);
    if (!member) return false;
    member.radios = [];
    return true;
  }),
];

function slip(kind: string, floor: number, change: (plan: WrittenPlan, pick: number) => boolean): Mutation {
  return { kind, floor, mutate: change };
}

function oneOf<Entry>(entries: readonly Entry[], pick: number): Entry | undefined {
  return entries[pick % Math.max(1, entries.length)];
}

/** Two neighbouring figures exchanged that differ, or undefined where there are none. */
function exchanged(text: string, pick: number): string | undefined {
  const at = [...text].flatMap((_, k) => {
    const [a, b] = [text[k] ?? '', text[k + 1] ?? ''];
    return /\d/.test(a) && /\d/.test(b) && a !== b ? [k] : [];
  });
  const k = oneOf(at, pick);
  return k === undefined ? undefined : `${text.slice(0, k)}${text[k + 1]}${text[k]}${text.slice(k + 2)}`;
}
