import { expect, test } from 'vitest';
import { findingsOf } from '../findings-of.ts';
import { underRules } from '../under-rules.ts';

const found = async (name: string, head = '') =>
  (
    await findingsOf(`${head}
channels:
  1: { name: GAP, repeater: gap }
  3: { name: TALK, standard: ${name} }`)
  )
    .filter(({ rule }) => rule === 'standard/unknown-channel')
    .map(({ message, suggestion }) => [message, suggestion]);

// IARU Region 1 VHF Handbook, FM channel designators: RF79 and U642 are in its table, and no channel of these rules.
test.each([
  ['RF79', '51.790'],
  ['U642', '438.025'],
  ['RB1', '433.025'],
])('%s is told its frequency where Region 1 has its numbering, and no other channel', async (name, at) => {
  const [[message, suggestion] = [], ...rest] = await found(name, underRules('eu', 'Europe/Berlin'));
  expect(message).toContain(`\`${name}\` is ${at} MHz`);
  expect([suggestion, rest]).toEqual([undefined, []]);
});

test('elsewhere such a name is unknown as any other', async () => {
  const [[message] = []] = await found('U642');
  expect(message).toMatch(/^There is no published channel `U642`/);
});
