/**
 * How long a message takes over a path of digipeaters, connected as AX.25 has it: a connect and its answer,
 * frames of information, each turn of them acknowledged, a disconnect and its answer. Digipeaters acknowledge
 * nothing: every transmission is repeated on every hop, one after another on one channel.
 *
 * AX.25 version 2.2 revision 4, sections 4.3 (frames), 6.3 (connected procedures), 6.7.1.1 (timer T1). The sums
 * are derived.
 */
import { control, encodeFrame, frameOctets, type StationAddress } from './ax25-frame.ts';
import { exactFrameBits, meanFrameBits } from './frame-bits.ts';
import { type Modem, meanAccessWaitS, transmissionS } from './modem.ts';

export interface PacketPath {
  readonly from: StationAddress;
  readonly to: StationAddress;
  readonly through: readonly StationAddress[];
}

export interface MessageTime {
  /** Frames of information. */
  readonly frames: number;
  /** Transmissions on the channel, every hop counted. */
  readonly transmissions: number;
  /** Time the channel is taken. */
  readonly channelS: number;
  /** Waits for a slot before what the two ends send; a digipeater may use the first (6.7.1.5). */
  readonly waitS: number;
  /** The two together: from the first key to the last, if nothing is lost and nobody else sends. */
  readonly totalS: number;
  /** Longest single frame of information, one hop. */
  readonly frameS: number;
  /** The acknowledgement timer must not be shorter: twice the longest frame and its answer over all hops (6.7.1.1). */
  readonly t1FloorS: number;
  /** What one lost frame adds: the timer runs out and the frame is sent again. */
  readonly lostFrameS: number;
}

/** @param octets of the message, at least one */
export function messageTime(path: PacketPath, octets: number, modem: Modem): MessageTime {
  const hops = path.through.length + 1;
  const sizes = informationSizes(octets, modem.informationOctets);
  const exchanges = [
    exchange(exactS(path, control.connect, false, modem), exactS(path, control.accept, true, modem)),
    ...turns(sizes, modem.framesPerTurn).map((turn) =>
      exchange(turnS(path, turn, modem), exactS(path, control.receiveReady, true, modem)),
    ),
    exchange(exactS(path, control.disconnect, false, modem), exactS(path, control.accept, true, modem)),
  ];
  const channelS = hops * exchanges.reduce((sum, each) => sum + each, 0);
  const waitS = 2 * exchanges.length * meanAccessWaitS(modem);
  const longest = turnS(path, [Math.max(...sizes)], modem);
  const answer = exactS(path, control.receiveReady, true, modem);
  const t1FloorS = 2 * hops * (longest + answer);
  return {
    frames: sizes.length,
    transmissions: 2 * hops * exchanges.length,
    channelS,
    waitS,
    totalS: channelS + waitS,
    frameS: longest,
    t1FloorS,
    lostFrameS: t1FloorS + hops * longest + meanAccessWaitS(modem),
  };
}

/** One unconnected frame (UI), which nobody acknowledges and which is never sent again (6.3.7), over all hops. */
export function unconnectedFrameS(digipeaters: number, octets: number, modem: Modem): number {
  const bits = meanFrameBits(frameOctets(digipeaters, octets, true));
  return (digipeaters + 1) * transmissionS(modem, bits);
}

function exchange(sentS: number, answerS: number): number {
  return sentS + answerS;
}

/** A frame without information is known to the bit, since the call signs are. */
function exactS(path: PacketPath, octet: number, isAnswer: boolean, modem: Modem): number {
  const [from, to] = isAnswer ? [path.to, path.from] : [path.from, path.to];
  const through = isAnswer ? path.through.toReversed() : path.through;
  return transmissionS(modem, exactFrameBits(encodeFrame({ from, to, through, control: octet })));
}

/** Frames sent in one go: keyed once, each with its own flags. What is in them is not known, so the mean is taken. */
function turnS(path: PacketPath, sizes: readonly number[], modem: Modem): number {
  const bits = sizes.map((size) => meanFrameBits(frameOctets(path.through.length, size, true)));
  return transmissionS(
    modem,
    bits.reduce((sum, each) => sum + each, 0),
  );
}

function informationSizes(octets: number, most: number): readonly number[] {
  const whole = Math.max(1, Math.ceil(octets / most));
  return Array.from({ length: whole }, (_, index) => Math.min(most, octets - index * most));
}

function turns(sizes: readonly number[], framesPerTurn: number): readonly (readonly number[])[] {
  const count = Math.ceil(sizes.length / framesPerTurn);
  return Array.from({ length: count }, (_, index) =>
    sizes.slice(index * framesPerTurn, (index + 1) * framesPerTurn),
  );
}
