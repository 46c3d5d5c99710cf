import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const listening = (slot: number, mhz: string) =>
  foundBy(
    'channel/held-by-nobody',
    `channels:\n  1: { name: GAP, repeater: gap }\n  ${slot}: { name: WX, listen: ${mhz}, use: Weather broadcast }`,
  );

test('a slot number that no radio has is told by its number, one out of range by its frequency', async () => {
  expect(await listening(900, '162.550')).toEqual([
    'channels.900: No radio of any member has a slot 900, which WX is to go into.',
  ]);
  expect(await listening(5, '121.500')).toEqual([
    'channels.5: No radio of any member can hold slot 5, WX, at 121.500 MHz.',
  ]);
});
