import { expect, test } from 'vitest';
import { dcsPairs } from '../../sources/dcs-pairs.ts';
import { foundBy } from '../found-by.ts';

const found = (first: string, second: string) =>
  foundBy(
    'tone/dcs-inverse-in-use',
    `channels:\n  1: { name: GAP, repeater: gap }\n  3: { name: EAST, simplex: 146.550, width: 25, tone: ${first} }\n  4: { name: WEST, simplex: 146.550, width: 25, tone: ${second} }\n`,
  );

test('each published pair of a code and its inverse is found on one frequency, sent upright', async () => {
  for (const [code, inverse] of dcsPairs.filter(([code, inverse]) => code < inverse).slice(0, 12)) {
    expect(await found(`D${code}N`, `D${inverse}N`)).toEqual([
      `channels.4.tone: D${inverse}N is the D${code}N of EAST upside down, both at 146.550 MHz: a radio with the wrong polarity opens to it.`,
    ]);
  }
});

test('a code and its inverse sent inverted are one signal, and are found once', async () => {
  expect(await found('D023N', 'D047I')).toEqual([
    'channels.4.tone: D047I is the same signal as the D023N of EAST, both at 146.550 MHz.',
  ]);
  expect(await found('D023N', 'D025N')).toEqual([]);
});
