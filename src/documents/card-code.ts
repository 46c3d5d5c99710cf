/**
 * What the code on the back of a card says, in the 45 characters that a QR code packs two to eleven bits
 * (ISO/IEC 18004, alphanumeric mode): group, revision, plan check, then each channel, so that a lost card or
 * another program can be held against the plan without a network.
 *
 *   READBACK N5L3 R3/1 146.94-0.6 T100.0/2 444.325+5 TD023N/9 162.55 RX
 *
 * After the slot stand what is received in MHz, the shift that is transmitted, `T` and the tone sent, and `RX`
 * where the carrier may only listen. No name is in it.
 */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import { formatFrequency } from '../radio/format-quantity.ts';
import { offsetSize, toneText } from './figures.ts';

export function cardCode(
  check: string,
  revision: number,
  channels: readonly { readonly on: ChannelParticulars; readonly listenOnly: boolean }[],
): string {
  const rows = channels.map(({ on, listenOnly }) => {
    const shift =
      listenOnly || on.direction === 'none' ? '' : `${on.direction === 'minus' ? '-' : '+'}${offsetSize(on)}`;
    const tone = listenOnly || !on.tone ? '' : ` T${toneText(on)}`;
    const receive = formatFrequency(on.receiveHz).replace(/0+$/, '').replace(/\.$/, '.0');
    return `/${on.slot} ${receive}${shift}${tone}${listenOnly ? ' RX' : ''}`;
  });
  return `READBACK ${check} R${revision}${rows.join('')}`.toUpperCase();
}
