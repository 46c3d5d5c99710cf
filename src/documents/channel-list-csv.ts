/** The channel list as CSV. The direction of the offset is a word of its own, so that no cell begins with a sign. */
import type { ChannelListRow } from './channel-list.ts';
import { csv } from './formats/csv.ts';

export function channelListCsv(rows: readonly ChannelListRow[]): Uint8Array {
  const head = [
    'slot',
    'name',
    'receive MHz',
    'transmit MHz',
    'offset direction',
    'offset MHz',
    'tone sent',
    'tone needed to hear',
    'channel spacing',
    'emission',
    'service',
    'members who transmit',
    'members who only listen',
    'use',
  ];
  return csv([
    head,
    ...rows.map((row) => [
      row.slot,
      row.name,
      { figure: ungrouped(row.receive) },
      row.transmit === '' ? '' : { figure: ungrouped(row.transmit) },
      row.direction,
      row.offset,
      row.tone,
      row.receiveTone,
      row.spacing,
      row.emission,
      row.service,
      row.transmitters,
      row.listeners,
      row.use,
    ]),
  ]);
}

/** On paper the figures stand in groups; a spreadsheet wants a number. */
function ungrouped(figure: string): string {
  return figure.replaceAll(' ', '');
}
