import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const gap = (rest: string) =>
  `repeaters:\n  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: 100.0, ${rest} }\n`;
const found = (repeater: string, channel: string) =>
  foundBy('channel/contradicts-repeater', `${gap(repeater)}channels:\n  1: { name: GAP, ${channel} }\n`);

test('a tone, a squelch tone or a width other than that of the repeater is found where the channel writes it', async () => {
  expect(await found('output-tone: 88.5, width: 25', 'repeater: gap, tone: D023N')).toEqual([
    'channels.1.tone: GAP sends D023N; Gap repeater waits for 100.0.',
  ]);
  expect(await found('output-tone: 88.5, width: 25', 'repeater: gap, receive-tone: 91.5')).toEqual([
    'channels.1.receive-tone: GAP opens to 91.5; Gap repeater sends 88.5.',
  ]);
  expect(await found('width: 25', 'repeater: gap, width: 12.5')).toEqual([
    'channels.1.width: GAP is 12.5 kHz wide; Gap repeater is 25 kHz.',
  ]);
});

test('a pair that is written out is held to the repeater whose pair it is', async () => {
  expect(await found('width: 25', 'receive: 146.940, transmit: 146.340')).toEqual([
    'channels.1: GAP is the pair of Gap repeater, which waits for 100.0, and sends no tone.',
  ]);
  expect(await found('width: 25', 'receive: 146.940, transmit: 146.340, tone: 100.0')).toEqual([]);
});

test('the same figure twice, and a tone where the repeater has none written, contradict nothing', async () => {
  expect(await found('width: 25', 'repeater: gap, tone: 100.0, receive-tone: 100.0, width: 25')).toEqual([]);
});

test('one signal under two names is no contradiction', async () => {
  expect(
    await foundBy(
      'channel/contradicts-repeater',
      'repeaters:\n  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: -0.6, tone: D023N }\nchannels:\n  1: { name: GAP, repeater: gap, tone: D047I }\n',
    ),
  ).toEqual([]);
});
