import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const channels = (mhz: string) =>
  `channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: SIMP, simplex: ${mhz}, width: 25 }`;
const found = (mhz: string) => foundBy('band-plan/in-weak-signal-segment', channels(mhz));

// ARRL band plan, 2 m and 70 cm: 144.200 and 432.10 are calling frequencies of weak-signal operators.
test.each(['144.150', '144.200', '144.250', '432.100'])(
  'FM on %s MHz, among weak signals or on their calling frequency, is found',
  async (mhz) => {
    expect(await found(mhz)).toHaveLength(1);
  },
);

// The same: 146.52 and 446.0 are calling frequencies of FM.
test.each(['146.520', '446.000', '146.550'])('FM on %s MHz is where FM belongs', async (mhz) => {
  expect(await found(mhz)).toEqual([]);
});
