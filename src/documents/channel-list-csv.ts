/** The channel list as CSV. The direction of the offset is a word of its own, so that no cell begins with a sign. */
import type { ChannelListRow } from './channel-list.ts';
import { csv } from './formats/csv.ts';

/** @param columns what each is called, in the order of the cells below */
export function channelListCsv(rows: readonly ChannelListRow[], columns: readonly string[]): Uint8Array {
  return csv([
    columns,
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
