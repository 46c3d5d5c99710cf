import { expect, test } from 'vitest';
import { dcsPairs } from '../../sources/dcs-pairs.ts';
import { foundBy } from '../found-by.ts';

const channels = (...entries: string[]) =>
  `channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: SIMP, simplex: 146.550, width: 25 }\n${entries.map((entry, index) => `  ${10 + index}: { name: CH ${index}, simplex: 147.540, width: 25, use: Work, ${entry} }`).join('\n')}`;

// Codes that are one signal under two names: the conversion chart of 104 codes.
test.each(dcsPairs.slice(0, 10))(
  'the code %s normal and %s inverted are told once, as codes',
  async (normal, inverted) => {
    const piece = channels(`tone: D${normal}N`, `tone: D${inverted}I`);
    expect(await foundBy('channel/duplicate', piece)).toEqual([]);
    expect(await foundBy('tone/dcs-inverse-in-use', piece)).toHaveLength(1);
  },
);

test('one channel kept twice at two powers, or with two tones, is meant so', async () => {
  expect(await foundBy('channel/duplicate', channels('power: high', 'power: low'))).toEqual([]);
  expect(await foundBy('channel/duplicate', channels('tone: 100.0', 'tone: 103.5'))).toEqual([]);
  expect(await foundBy('channel/duplicate', channels('tone: 100.0', 'tone: 100.0'))).toEqual([
    'channels.11: Slot 11, CH 1, is the same as slot 10, CH 0: 147.540 MHz, tone 100.0.',
  ]);
});
