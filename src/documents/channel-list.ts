/** The channel list: every channel of the plan with its particulars, for a spreadsheet and for paper. */
import type { Consequences } from '../consequences/consequences.ts';
import type { Plan } from '../plan/model.ts';
import { formatSpacing } from '../radio/format-quantity.ts';
import { formatTone } from '../radio/tone.ts';
import { megahertz, offsetSize } from './figures.ts';
import type { Words } from './words.ts';

export interface ChannelListRow {
  readonly slot: number;
  readonly name: string;
  readonly use: string;
  readonly receive: string;
  readonly transmit: string;
  readonly direction: string;
  readonly offset: string;
  readonly tone: string;
  readonly receiveTone: string;
  readonly spacing: string;
  readonly emission: string;
  readonly service: string;
  /** How many members may transmit, and how many can only listen. */
  readonly transmitters: number;
  readonly listeners: number;
  readonly listenOnly: boolean;
}

export function gatherChannelList(
  plan: Plan,
  consequences: Consequences,
  words: Words,
): readonly ChannelListRow[] {
  return [...consequences.channels.values()]
    .toSorted((a, b) => a.slot - b.slot)
    .map((on) => {
      const uses = [...plan.members.keys()].map((member) => consequences.best(member, on.slot)?.may);
      return {
        slot: on.slot,
        name: on.name,
        use: on.channel.use ?? '',
        receive: megahertz(on.receiveHz),
        transmit: on.transmitHz === undefined ? '' : megahertz(on.transmitHz),
        direction: on.transmitHz === undefined ? words.listenOnly : words.direction[on.direction],
        offset: on.direction === 'none' ? '' : offsetSize(on),
        tone: on.tone ? formatTone(on.tone) : '',
        receiveTone: on.receiveTone ? formatTone(on.receiveTone) : '',
        spacing: formatSpacing(on.spacingHz),
        emission: on.emission,
        service: on.services[0] === undefined ? '' : words.service(on.services[0]),
        transmitters: uses.filter((may) => may === 'transmit').length,
        listeners: uses.filter((may) => may === 'listen only').length,
        listenOnly: on.transmitHz === undefined,
      };
    });
}
