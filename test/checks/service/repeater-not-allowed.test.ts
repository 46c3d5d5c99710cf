import { expect, test } from 'vitest';
import { formatFrequency } from '../../../src/radio/format-quantity.ts';
import { mhz } from '../../../src/regulations/mhz.ts';
import { uhfCbTable } from '../../sources/regulations/au-uhf-cb.ts';
import { foundBy } from '../found-by.ts';
import { underRules } from '../under-rules.ts';

const found = (rules: string, timezone: string, service: string, output: string) =>
  foundBy(
    'service/repeater-not-allowed',
    `${underRules(rules, timezone, service)}
repeaters:
  gap: { name: Relay, output: ${output}, input: ${formatFrequency(mhz(output) + 750_000)}, service: ${service} }`,
  );

// The 80 channels as listed; New Zealand shares them (AS/NZS 4365, from memory).
test.each([
  ['au', 'Australia/Sydney', 'uhf-cb'],
  ['nz', 'Pacific/Auckland', 'prs'],
])(
  'under the rules of %s a repeater sends on the outputs of pairs and on no other channel',
  async (rules, timezone, service) => {
    for (const [n, output, role] of uhfCbTable) {
      // What is held back is no channel at all, and speech on 22 and 23 is found as that.
      if (/held back|telemetry/.test(role)) continue;
      const lines = await found(rules, timezone, service, output);
      const isOutput = role.includes('repeater output');
      expect(lines.length, `channel ${n}`).toBe(isOutput ? 0 : 1);
    }
  },
);

test('at an input, the output of its pair is named', async () => {
  expect(await found('au', 'Australia/Sydney', 'uhf-cb', '477.200')).toEqual([
    'repeaters.gap.output: 477.200 MHz is no output of a repeater in the UHF Citizens’ Band: it is what members send to one, whose output is 476.450 MHz.',
  ]);
});
