/**
 * A frame as AX.25 has it, octet by octet.
 *
 * AX.25 Link Access Protocol for Amateur Packet Radio, version 2.2 revision 4 (27 October 2025): 3.1 the order
 * of the fields, 3.3 control, 3.4 PID, 3.5 information, 3.7 the check sequence (ISO 3309), 3.12 addresses.
 */

/** An address as the frame holds it. */
export interface StationAddress {
  /** One to six capital letters and digits. */
  readonly callSign: string;
  /** 0 to 15. */
  readonly ssid: number;
}

export interface Frame {
  readonly to: StationAddress;
  readonly from: StationAddress;
  readonly through: readonly StationAddress[];
  readonly control: number;
  /** Information and unnumbered information frames have one; 0xF0 says that no layer 3 is spoken. */
  readonly pid?: number;
  readonly information?: Uint8Array;
}

/** The longest information field unless stations agree on another (N1; 6.3.2, 6.7.2.1). */
export const longestInformation = 256;

/** Control octets of the frames that open, answer, close and acknowledge (4.3), P or F set. */
export const control = { connect: 0x3f, disconnect: 0x53, accept: 0x73, receiveReady: 0x11 } as const;

/** Octets between the flags: addresses, control, PID if there is one, information, check sequence. */
export function frameOctets(digipeaters: number, informationOctets: number, hasPid: boolean): number {
  return 7 * (2 + digipeaters) + 1 + (hasPid ? 1 : 0) + informationOctets + 2;
}

/** The octets between the flags, as they are sent, the check sequence last and its low octet first. */
export function encodeFrame(frame: Frame): Uint8Array {
  const path = [frame.to, frame.from, ...frame.through];
  const octets = [
    ...path.flatMap((address, index) => addressOctets(address, index === 0, index === path.length - 1)),
    frame.control,
    ...(frame.pid === undefined ? [] : [frame.pid]),
    ...(frame.information ?? []),
  ];
  const check = frameCheck(octets);
  return Uint8Array.from([...octets, check & 0xff, check >> 8]);
}

/** Six characters and the identifier, each moved up by one bit; the lowest bit of the last says that no more follow. */
function addressOctets({ callSign, ssid }: StationAddress, isCommand: boolean, isLast: boolean): number[] {
  const letters = [...callSign.padEnd(6, ' ')].map((letter) => letter.charCodeAt(0) << 1);
  // Two reserved bits are 1; the top bit of destination and source tells command from response (6.1.2).
  return [...letters, (isCommand ? 0x80 : 0) | 0x60 | (ssid << 1) | (isLast ? 1 : 0)];
}

/** CRC of ISO 3309: polynomial x^16 + x^12 + x^5 + 1, lowest bit first, all ones before and complemented after. */
export function frameCheck(octets: Iterable<number>): number {
  let remainder = 0xffff;
  for (const octet of octets) {
    remainder ^= octet;
    for (let bit = 0; bit < 8; bit += 1)
      remainder = remainder & 1 ? (remainder >> 1) ^ 0x8408 : remainder >> 1;
  }
  return remainder ^ 0xffff;
}
