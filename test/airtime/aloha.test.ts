import { expect, test } from 'vitest';
import {
  mostPureAloha,
  mostSlottedAloha,
  pureAloha,
  sharedCapacity,
  slottedAloha,
} from '../../src/airtime/aloha.ts';
import { unconnectedFrameS } from '../../src/airtime/message-time.ts';
import { usualModem } from '../../src/airtime/modem.ts';

// Abramson, 1970; Roberts, 1975.
test('stations that do not hear each other use at most 18.4 % of a channel, 36.8 % in slots', () => {
  expect(mostPureAloha).toBeCloseTo(0.1839, 4);
  expect(mostSlottedAloha).toBeCloseTo(0.3679, 4);
});

test('neither more nor less load than the best carries more', () => {
  for (const load of [0.1, 0.3, 0.49, 0.51, 0.8, 0.99, 1.01, 2]) {
    expect(pureAloha(load)).toBeLessThan(mostPureAloha);
    expect(slottedAloha(load)).toBeLessThan(mostSlottedAloha);
  }
});

// Derived by hand: 0.1839 / 3.216 s is 3.4 a minute, with a TXDELAY of 300 ms.
test('a channel with two digipeaters carries at most three unconnected frames of 80 octets a minute, 34 in ten', () => {
  const channelS = unconnectedFrameS(2, 80, { ...usualModem, txDelayS: 0.3 });
  expect(sharedCapacity(60, channelS)).toBe(3);
  expect(sharedCapacity(600, channelS)).toBe(34);
});
