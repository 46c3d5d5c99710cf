import { describe, expect, test } from 'vitest';
import { formatFrequency } from '../../../src/radio/format-quantity.ts';
import { mhz } from '../../../src/regulations/mhz.ts';
import { repeaterBarred } from '../../sources/regulations/us-amateur-rules.ts';
import { foundBy } from '../found-by.ts';

const pair = (output: number, input: number) =>
  `repeaters:\n  gap: { name: Gap, call: W4XGP, output: ${formatFrequency(output)}, input: ${formatFrequency(input)}, tone: 100.0, width: 12.5 }`;
const found = (output: number, input: number) => foundBy('repeater/forbidden-segment', pair(output, input));

// 47 CFR 97.205(b): the segment is closed to a repeater's output and to its input alike.
describe.each(repeaterBarred)('in %s-%s MHz', (from, to) => {
  const middle = Math.round((mhz(from) + mhz(to)) / 2 / 5000) * 5000;
  // An end that is open to repeaters and lies in the same band, where there is one above.
  const open =
    mhz(to) + 500_000 > 146_000_000 && mhz(to) < 148_000_000 ? mhz(to) + 500_000 : mhz(to) + 100_000;

  test('a repeater may not send', async () => {
    expect(await found(middle, open)).toHaveLength(1);
    expect((await found(middle, open))[0]).toMatch(/^repeaters\.gap\.output/);
  });

  test('a repeater may not listen', async () => {
    expect((await found(open, middle)).some((line) => line.startsWith('repeaters.gap.input'))).toBe(true);
  });

  test('a carrier on the upper edge reaches in, and one beyond the width of its signal does not', async () => {
    expect((await found(mhz(to), open)).some((line) => line.startsWith('repeaters.gap.output'))).toBe(true);
    expect((await found(mhz(to) + 10_000, open)).filter((line) => line.includes('.output'))).toEqual([]);
  });
});

// Pairs of the ARRL band plan, first and last of each block of 2 m.
test.each([
  ['145.21', '144.61'],
  ['145.49', '144.89'],
  ['146.61', '146.01'],
  ['146.97', '146.37'],
  ['147.00', '147.60'],
  ['147.39', '147.99'],
])('the pair %s / %s is open to repeaters', async (output, input) => {
  expect(await found(mhz(output), mhz(input))).toEqual([]);
});
