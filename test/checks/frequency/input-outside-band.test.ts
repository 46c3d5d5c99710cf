import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findingsOf } from '../findings-of.ts';
import { foundBy } from '../found-by.ts';

const repeater = (outputMHz: string, inputMHz: string) =>
  `repeaters:\n  gap: { name: Gap repeater, call: W4XGP, output: ${outputMHz}, input: ${inputMHz}, tone: 100.0 }\n`;

test('an input that lies in another service than the output is outside the band of the output', async () => {
  expect(
    await foundBy(
      'frequency/input-outside-band',
      'repeaters:\n  gap: { name: Gap repeater, call: W4XGP, output: 146.940, offset: 5, tone: 100.0 }\n',
    ),
  ).toEqual([
    'repeaters.gap.offset: Input is 151.940 MHz, outside 144.000-148.000 MHz (2 m); with offset -0.6 MHz it would be 146.340 MHz.',
  ]);
});

// Channels and bands of the services: 47 CFR 95.563, 95.1763, 95.2763 and 97.301.
const servicesMHz = {
  amateur: ['146.940', '147.300', '224.500', '444.900'],
  gmrs: ['462.5500', '462.6000', '462.7250', '462.5625'],
  murs: ['151.820', '151.940', '154.570'],
};

test('no repeater with its ends in two services goes without an error', async () => {
  const end = fc.constantFrom(
    ...Object.entries(servicesMHz).flatMap(([service, all]) => all.map((mhz) => ({ service, mhz }))),
  );
  await fc.assert(
    fc.asyncProperty(end, end, async (output, input) => {
      fc.pre(output.service !== input.service);
      const errors = (await findingsOf(repeater(output.mhz, input.mhz))).filter(
        ({ severity, path }) => severity === 'error' && path[0] === 'repeaters',
      );
      expect([output.mhz, input.mhz, errors.length > 0]).toEqual([output.mhz, input.mhz, true]);
    }),
    { numRuns: 60 },
  );
});
