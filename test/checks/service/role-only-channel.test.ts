import { expect, test } from 'vitest';
import { uhfCbTable } from '../../sources/regulations/au-uhf-cb.ts';
import { foundBy } from '../found-by.ts';
import { underRules } from '../under-rules.ts';

const found = (head: string, channel: string, repeaters = '') =>
  foundBy(
    'service/role-only-channel',
    `${head}
${repeaters}
channels:
  1: { name: TALK, ${channel} }
  3: { name: REST, listen: 121.500 }
check-ins:
  morning: { name: Morning check-in, channel: 1, at: "07:30", who: all, control: [ada] }
fallbacks:
  first: { name: First, who: all, reach: [ada], rungs: [{ grade: emergency, channel: 1 }] }`,
  );
const australia = underRules('au', 'Australia/Sydney', 'uhf-cb');
const newZealand = underRules('nz', 'Pacific/Auckland', 'prs');

// Emergency-monitoring group’s list, class licence of 2015, section 6(a): 5 and 35 for emergencies only.
test('a check-in through the Australian repeater 5 is found, through any other it is not', async () => {
  const relay = (output: string) =>
    `repeaters:\n  gap: { name: Relay, output: ${output}, offset: 0.75, service: uhf-cb, place: hill }`;
  for (const [n, output, role] of uhfCbTable) {
    if (!role.includes('repeater output')) continue;
    const lines = await found(australia, 'repeater: gap', relay(output));
    expect(lines, `channel ${n}`).toEqual(
      n === 5
        ? [
            'check-ins.morning.channel: Morning check-in is on UHF CB 5, which is not for that: emergencies only.',
          ]
        : [],
    );
  }
});

// New Zealand CB association: an input is not to be used directly, so no rung of any grade may be. In Australia it is, with no repeater in range.
test('direct calls on an input are found in New Zealand, and not in Australia', async () => {
  for (const [n, , role] of uhfCbTable) {
    if (/emergency|telemetry|held back/.test(role)) continue;
    const [here, there] = [
      await found(newZealand, `standard: PRS ${n}`),
      await found(australia, `standard: UHF CB ${n}`),
    ];
    expect([here.length, there.length], `channel ${n}`).toEqual([role === 'repeater input' ? 2 : 0, 0]);
  }
});
