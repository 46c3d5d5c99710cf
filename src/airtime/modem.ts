/**
 * How a station's modem keys and waits. Defaults are the published ones where there are any.
 *
 * M. Chepponis and P. Karn, The KISS TNC: a simple host-to-TNC protocol (1987), section 4: TXDELAY 50 units of
 * 10 ms, persistence P = 63 (p = (P + 1) / 256), slot time 10 units of 10 ms.
 */
import { longestInformation } from './ax25-frame.ts';

export interface Modem {
  readonly bitsPerS: number;
  /** From keying until data: the transmitter comes up and the receiver's squelch opens. */
  readonly txDelayS: number;
  /** After the data until the key is let go. */
  readonly txTailS: number;
  /** Chance of sending in a slot once the channel is clear. */
  readonly persistence: number;
  readonly slotS: number;
  /** Information octets of a frame at most (N1; AX.25 version 2.2 revision 4, 6.7.2.1). */
  readonly informationOctets: number;
  /** Frames sent before an answer is waited for (k; 6.7.2.3 allows 1 to 7). */
  readonly framesPerTurn: number;
}

/** One frame a turn is what operators set on poor paths (common practice); the standard's own default is 7. */
export const usualModem: Modem = {
  bitsPerS: 1200,
  txDelayS: 0.5,
  txTailS: 0,
  persistence: 64 / 256,
  slotS: 0.1,
  informationOctets: longestInformation,
  framesPerTurn: 1,
};

/** One transmission of some bits: key, data, tail. */
export function transmissionS(modem: Modem, bits: number): number {
  return modem.txDelayS + bits / modem.bitsPerS + modem.txTailS;
}

/** Mean wait from a clear channel until a station sends, (1 - p) / p slots (derived from the rule of section 4). */
export function meanAccessWaitS({ persistence, slotS }: Modem): number {
  return ((1 - persistence) / persistence) * slotS;
}
