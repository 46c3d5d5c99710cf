/**
 * Bits of a frame on the air: a 0 is put in after every five 1s between the flags, so that no data look like
 * a flag (AX.25 version 2.2 revision 4, 3.6), and a flag of eight bits stands before and after (3.1).
 */

const flagBits = 16;

/**
 * For data like random bits one 0 is put in for every 62: the mean wait for five 1s in a row is 2^6 - 2
 * (derived). Plain English text takes hardly any; 256 octets of ones take 1 in 5.
 */
const bitsPerStuffed = 62;

/** Mean bits of a frame of data like random bits, flags included. Octets are those between the flags. */
export function meanFrameBits(octets: number): number {
  return 8 * octets * (1 + 1 / bitsPerStuffed) + flagBits;
}

/** Bits of one certain frame, flags included. */
export function exactFrameBits(octets: Uint8Array): number {
  return 8 * octets.length + stuffedBits(octets) + flagBits;
}

/** How many 0s are put in, the low bit of each octet being sent first (3.8). */
export function stuffedBits(octets: Uint8Array): number {
  let ones = 0;
  let stuffed = 0;
  for (const octet of octets) {
    for (let bit = 0; bit < 8; bit += 1) {
      ones = (octet >> bit) & 1 ? ones + 1 : 0;
      if (ones === 5) {
        stuffed += 1;
        ones = 0;
      }
    }
  }
  return stuffed;
}
