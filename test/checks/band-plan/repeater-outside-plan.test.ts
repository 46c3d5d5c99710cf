import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';

const found = (output: string, input: string) =>
  foundBy(
    'band-plan/repeater-outside-plan',
    `repeaters:\n  gap: { name: Gap, call: W4XGP, output: ${output}, input: ${input}, tone: 100.0, width: 12.5 }`,
  );

// ARRL band plan: television below 432 MHz and from 1276 MHz, outputs and inputs by local choice from 442 MHz.
test('an end of a repeater among television is found, one among repeaters is not', async () => {
  expect(await found('421.500', '426.500')).toHaveLength(1);
  expect(await found('1278.000', '1270.500')).toHaveLength(1);
  expect(await found('442.500', '447.500')).toEqual([]);
});
