import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const pair = (receive: string, transmit: string) =>
  foundBy(
    'band-plan/simplex-on-repeater-frequency',
    `channels:\n  1: { name: GAP, repeater: gap }\n  7: { name: EAST, receive: ${receive}, transmit: ${transmit}, tone: 110.9, use: East side }`,
  );

// ARRL band plan, 2 m: 147.00-147.39 repeater outputs, 147.60-147.99 their inputs.
test('a pair that listens on an output and sends on its input works through a repeater', async () => {
  expect(await pair('147.120', '147.720')).toEqual([]);
});

test('a pair that sends on an output is found', async () => {
  expect(await pair('147.720', '147.120')).toHaveLength(1);
});
