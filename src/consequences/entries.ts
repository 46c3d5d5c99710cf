/**
 * What is keyed into a kind of radio: for each slot it holds, every value its menu may ask for. Worksheets
 * print these; an audit holds what was really entered against them.
 */
import type { Mode, Plan, Radio } from '../plan/model.ts';
import type { Tone } from '../radio/tone.ts';
import type { ChannelParticulars, OffsetDirection } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import { stepsReaching } from './radio-fit.ts';
import type { PowerSetting } from './use.ts';

export interface Entry {
  readonly slot: number;
  /** The channel's name in the plan. */
  readonly name: string;
  /** The name as this radio shows it; empty where it shows none. */
  readonly shown: string;
  readonly receiveHz: number;
  /** Absent where nobody with this radio may transmit. */
  readonly transmitHz?: number;
  /** Absent where the radio has no steps of its own. */
  readonly stepHz?: number;
  readonly mode: Mode;
  readonly direction: OffsetDirection;
  readonly offsetHz: number;
  readonly tone?: Tone;
  readonly receiveTone?: Tone;
  readonly spacingHz: number;
  /** The setting within the limits of every holder who may transmit. */
  readonly power?: PowerSetting;
  /** Holders of the radio who may transmit, and all holders. */
  readonly senders: readonly string[];
  readonly holders: readonly string[];
}

/**
 * In order of the slots, for all who hold such a radio, or for one member alone. On a channel that is only
 * listened to, what would make the radio transmit stays at its neutral value, so that nothing useful goes out if
 * the key is pressed by mistake.
 */
export function entriesOf(
  plan: Plan,
  consequences: Consequences,
  radio: Radio,
  member?: string,
): readonly Entry[] {
  const names = consequences.shownNames(radio);
  const whose = member === undefined ? consequences.holdersOf(radio.id) : [member];
  const holders = whose.filter((id) => plan.members.has(id));
  return consequences.slotsOf(radio.id).flatMap((slot) => {
    const on = consequences.channels.get(slot);
    return on ? [entryOf(consequences, radio, on, names.get(slot)?.shown ?? on.name, holders)] : [];
  });
}

function entryOf(
  consequences: Consequences,
  radio: Radio,
  on: ChannelParticulars,
  shown: string,
  holders: readonly string[],
): Entry {
  const sending = holders.flatMap((id) => {
    const use = consequences.use(id, radio.id, on.slot);
    return use?.may === 'transmit' ? [{ id, use }] : [];
  });
  const power = sending.flatMap(({ use }) => use.setting ?? []).toSorted((a, b) => a.powerW - b.powerW)[0];
  const transmitHz = sending.length > 0 ? on.transmitHz : undefined;
  const sends = transmitHz !== undefined;
  const steps = stepsReaching(on.receiveHz, radio.stepsHz);
  const stepHz = steps.find((step) => transmitHz === undefined || transmitHz % step === 0) ?? steps[0];
  return {
    slot: on.slot,
    name: on.name,
    shown,
    receiveHz: on.receiveHz,
    ...(sends && { transmitHz }),
    ...(stepHz !== undefined && { stepHz }),
    mode: on.mode,
    direction: sends ? on.direction : 'none',
    offsetHz: sends ? on.offsetHz : 0,
    ...(sends && on.tone && { tone: on.tone }),
    ...(on.receiveTone && { receiveTone: on.receiveTone }),
    spacingHz: on.spacingHz,
    ...(power && { power }),
    senders: sending.map(({ id }) => id),
    holders,
  };
}
