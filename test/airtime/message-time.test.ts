import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameOctets } from '../../src/airtime/ax25-frame.ts';
import { meanFrameBits } from '../../src/airtime/frame-bits.ts';
import { messageTime, unconnectedFrameS } from '../../src/airtime/message-time.ts';
import { type Modem, meanAccessWaitS, transmissionS, usualModem } from '../../src/airtime/modem.ts';

// Worked figures derived by hand from AX.25 version 2.2 revision 4 (3.1, 3.6, 6.7.1.1) with a TXDELAY of 300 ms,
// no tail, data like random bits, every figure rounded to milliseconds.
const modem: Modem = { ...usualModem, txDelayS: 0.3 };
const n7lem = { callSign: 'N7LEM', ssid: 0 };
const nj7p = { callSign: 'NJ7P', ssid: 0 };
const digipeaters = [
  { callSign: 'KX4XRG', ssid: 3 },
  { callSign: 'KX4XRG', ssid: 4 },
  { callSign: 'KX4XRG', ssid: 5 },
];
const over = (count: number) => ({ from: n7lem, to: nj7p, through: digipeaters.slice(0, count) });

test('a frame of 256 octets takes 2.169 s of channel directly, 2.217 and 2.264 s with one and two digipeaters named in it', () => {
  const frames = [0, 1, 2].map((count) => transmissionS(modem, meanFrameBits(frameOctets(count, 256, true))));
  expect(frames.map((s) => s.toFixed(3))).toEqual(['2.169', '2.217', '2.264']);
  expect(messageTime(over(2), 256, modem).frameS).toBeCloseTo(2.264, 3);
});

test('an unconnected frame of 80 octets through two digipeaters takes 3.216 s of channel', () => {
  expect(unconnectedFrameS(2, 80, modem)).toBeCloseTo(3.2161, 4);
});

test('connect and answer take 0.857 s directly with the call signs of the standard, to the bit', () => {
  // Two frames of 154 bits each at 1200 bit/s, keyed twice: 856.67 ms. The message itself is one octet.
  const one = messageTime(over(0), 1, modem);
  const turn = transmissionS(modem, meanFrameBits(frameOctets(0, 1, true)));
  const rest = one.channelS - turn;
  // What is left is five short frames: connect, answer, acknowledgement, disconnect, answer, of 136 bits and flags
  // and a few put in: none under 152, none over 157.
  expect(rest).toBeGreaterThanOrEqual(5 * (0.3 + 152 / 1200));
  expect(rest).toBeLessThanOrEqual(5 * (0.3 + 157 / 1200));
});

test('the acknowledgement timer must not be under 5.20 s directly, 10.77 s and 16.73 s with one and two digipeaters', () => {
  // The answer is taken here to the bit rather than at its mean, which moves the sum by less than 40 ms.
  const floors = [0, 1, 2].map((count) => messageTime(over(count), 256, modem).t1FloorS);
  for (const [index, expected] of [5.2, 10.77, 16.73].entries())
    expect(Math.abs((floors[index] ?? 0) - expected)).toBeLessThan(0.04);
});

test('frames of 128 octets need 3.46 s, more than the 3 s that many controllers are set to', () => {
  expect(messageTime(over(0), 128, { ...modem, informationOctets: 128 }).t1FloorS).toBeCloseTo(3.46, 1);
});

// Chepponis and Karn, The KISS TNC (1987), section 4.
test('with the default persistence and slot a station waits 300 ms in the mean, and keys for 500', () => {
  expect(meanAccessWaitS(usualModem)).toBeCloseTo(0.3, 12);
  expect(usualModem.txDelayS).toBe(0.5);
  expect(usualModem.persistence * 256 - 1).toBe(63);
});

test('500 characters are two frames of 256 octets at most, and eight transmissions on a direct path', () => {
  const time = messageTime(over(0), 500, usualModem);
  expect(time).toMatchObject({ frames: 2, transmissions: 8 });
  expect(messageTime(over(1), 500, usualModem).transmissions).toBe(16);
});

// By hand: connect, two turns and disconnect are four exchanges, each end of each waits 300 ms in the mean.
test('the two ends of a message of two frames wait 2.4 s in all for a slot, however many digipeaters there are', () => {
  expect(messageTime(over(0), 500, usualModem).waitS).toBeCloseTo(2.4, 9);
  expect(messageTime(over(2), 500, usualModem).waitS).toBeCloseTo(2.4, 9);
});

test('longer messages, more digipeaters and slower keying never take less time', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 0, max: 2 }),
      fc.integer({ min: 1, max: 7 }),
      (octets, count, framesPerTurn) => {
        const set = { ...usualModem, framesPerTurn };
        const { totalS } = messageTime(over(count), octets, set);
        expect(messageTime(over(count), octets + 1, set).totalS).toBeGreaterThan(totalS);
        expect(messageTime(over(count + 1), octets, set).totalS).toBeGreaterThan(totalS);
        expect(messageTime(over(count), octets, { ...set, txDelayS: 0.6 }).totalS).toBeGreaterThan(totalS);
        // The information alone, at the speed of the modem, is a floor nothing can be under.
        expect(totalS).toBeGreaterThan(((count + 1) * octets * 8) / 1200);
      },
    ),
    { seed: 7 },
  );
});
