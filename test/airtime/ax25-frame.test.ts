import fc from 'fast-check';
import { expect, test } from 'vitest';
import { control, encodeFrame, frameCheck, frameOctets } from '../../src/airtime/ax25-frame.ts';
import { exactFrameBits, meanFrameBits, stuffedBits } from '../../src/airtime/frame-bits.ts';

// Call signs of the example in AX.25 version 2.2 revision 4, 3.12 (figure of a frame without digipeaters).
const nj7p = { callSign: 'NJ7P', ssid: 0 };
const n7lem = { callSign: 'N7LEM', ssid: 0 };
const hex = (octets: Uint8Array) => Buffer.from(octets).toString('hex');

// ISO 3309 check sequence; 906E for the nine digits is the check value of its catalogue entry (CRC-16/IBM-SDLC).
test('the frame check of the digits one to nine is 906E', () => {
  expect(frameCheck(new TextEncoder().encode('123456789'))).toBe(0x906e);
});

// Addresses as in the example of AX.25, 3.12; control octets from 4.3.3; the frame check computed by hand once.
test('a connect from N7LEM to NJ7P is seventeen octets, sent in 154 bits', () => {
  const frame = encodeFrame({ to: nj7p, from: n7lem, through: [], control: control.connect });
  expect(hex(frame)).toBe('9c946ea04040e09c6e988a9a4061' + '3f' + '96f9');
  expect(stuffedBits(frame)).toBe(2);
  expect(exactFrameBits(frame)).toBe(154);
});

// ISO 3309: a receiver that runs the check over the frame and its check sequence is left with F0B8 (before the complement).
test('the check run over a whole frame leaves the residue of ISO 3309', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 256 }), (information) => {
      const frame = encodeFrame({ to: nj7p, from: n7lem, through: [], control: 0, pid: 0xf0, information });
      expect(frameCheck(frame)).toBe(0xf0b8 ^ 0xffff);
      expect(frame.length).toBe(frameOctets(0, information.length, true));
    }),
    { seed: 5 },
  );
});

test('no six ones in a row are left between the flags, and no 0 is put in without need', () => {
  fc.assert(
    fc.property(fc.uint8Array({ minLength: 1, maxLength: 300 }), (octets) => {
      const bits = [...octets]
        .flatMap((octet) => Array.from({ length: 8 }, (_, bit) => (octet >> bit) & 1))
        .join('');
      const sent = bits.replaceAll('11111', '111110');
      expect(sent).not.toContain('111111');
      expect(stuffedBits(octets)).toBe(sent.length - bits.length);
    }),
    { seed: 6 },
  );
});

test('addresses of a path through two digipeaters take 28 octets, and the last says that it is the last', () => {
  const through = [
    { callSign: 'KX4XRG', ssid: 3 },
    { callSign: 'KX4XRG', ssid: 15 },
  ];
  const frame = encodeFrame({ to: nj7p, from: n7lem, through, control: control.connect });
  expect(frame.length).toBe(frameOctets(2, 0, false));
  const last = [6, 13, 20, 27].map((index) => (frame[index] ?? 0) & 1);
  expect(last).toEqual([0, 0, 0, 1]);
  expect(((frame[27] ?? 0) >> 1) & 15).toBe(15);
});

// AX.25, 3.1, 3.6: derived sums; 274 octets with 256 of information, mean 2243.35 bits with flags.
test('a full frame of information is 274 octets and about 2243 bits', () => {
  expect(frameOctets(0, 256, true)).toBe(274);
  expect(meanFrameBits(274)).toBeCloseTo(2243.35, 2);
});

test('all ones are the worst case: 410 bits put into a frame of 274 octets with an information field of ones', () => {
  // 256 octets of ones alone take 2048 / 5 = 409; the octets around them make up the rest.
  expect(stuffedBits(new Uint8Array(256).fill(0xff))).toBe(409);
});

test('random data take one 0 for 62 bits', () => {
  let state = 12345;
  const random = Uint8Array.from({ length: 200_000 }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state >>> 24;
  });
  // 1.6 million bits hold about 25,800; their spread is under one in a hundred.
  expect((8 * random.length) / stuffedBits(random)).toBeCloseTo(62, 0);
});
