/** Repeaters and packet stations with their particulars, for a table each. */
import type { Antenna, Plan } from '../../plan/model.ts';
import { formatGain, formatLength, formatPower } from '../../radio/format-quantity.ts';
import { formatTone } from '../../radio/tone.ts';
import { megahertz, span } from '../figures.ts';
import { heldTogether } from '../held-together.ts';
import type { Words } from '../words.ts';

export interface RepeaterRow {
  readonly name: string;
  readonly call: string;
  readonly output: string;
  readonly input: string;
  readonly tone: string;
  readonly toneBack: string;
  readonly place: string;
  readonly power: string;
  readonly antenna: string;
  readonly timeOut: string;
  readonly needs: string;
}

export interface PacketRow {
  readonly kind: string;
  readonly name: string;
  readonly call: string;
  readonly slot: number;
  readonly place: string;
  readonly power: string;
  readonly antenna: string;
  readonly needs: string;
}

export function repeaterRows(plan: Plan, words: Words): readonly RepeaterRow[] {
  return [...plan.repeaters.values()].map((repeater) => ({
    name: repeater.name,
    call: repeater.call ?? '',
    output: megahertz(repeater.outputHz),
    input: megahertz(repeater.inputHz),
    tone: repeater.tone ? formatTone(repeater.tone) : '',
    toneBack: repeater.outputTone ? formatTone(repeater.outputTone) : '',
    place: placeName(plan, repeater.place),
    power: repeater.powerW === undefined ? '' : formatPower(repeater.powerW),
    antenna: antennaText(repeater.antenna),
    timeOut: repeater.timeOutMin === undefined ? '' : span(repeater.timeOutMin),
    needs: needsText(plan, repeater, words),
  }));
}

export function packetRows(plan: Plan, words: Words): readonly PacketRow[] {
  return (
    [
      ['mailbox', plan.mailboxes],
      ['digipeater', plan.digipeaters],
    ] as const
  ).flatMap(([kind, stations]) =>
    [...stations.values()].map((station) => ({
      kind: words.thing[kind],
      name: station.name,
      call: station.call,
      slot: station.channel,
      place: placeName(plan, station.place),
      power: station.powerW === undefined ? '' : formatPower(station.powerW),
      antenna: antennaText(station.antenna),
      needs: needsText(plan, station, words),
    })),
  );
}

export function placeName(plan: Plan, id: string | undefined): string {
  return id === undefined ? '' : (plan.places.get(id)?.name ?? id);
}

function antennaText({ gainDbi, heightM }: Antenna): string {
  return heldTogether(
    [gainDbi === undefined ? '' : formatGain(gainDbi), heightM === undefined ? '' : formatLength(heightM)]
      .filter(Boolean)
      .join(', '),
  );
}

function needsText(
  plan: Plan,
  { dependsOn, backupMin }: { readonly dependsOn: readonly string[]; readonly backupMin?: number },
  words: Words,
): string {
  const names = dependsOn.map((id) => plan.assets.get(id)?.name ?? plan.repeaters.get(id)?.name ?? id);
  return names.length === 0 && backupMin === undefined
    ? ''
    : heldTogether(words.needs(names, backupMin === undefined ? '' : span(backupMin)));
}
