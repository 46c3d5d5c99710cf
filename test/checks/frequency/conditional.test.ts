import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';
import { underRules } from '../under-rules.ts';

const found = (channel: string, head = '', repeaters = '') =>
  foundBy(
    'frequency/conditional',
    `${head}
${repeaters}
channels:
  1: { name: GAP, repeater: gap }
  3: { name: LINK, ${channel} }`,
  );
const canada = underRules('ca', 'America/Toronto').replaceAll(
  'radios: [handheld], at',
  'licences: { amateur: { class: basic, call: VE3XAA } }, radios: [handheld], at',
);

// 47 CFR 97.303(l): fixed forwarding stations, after 30 days' notice.
test('packet on 219.500 MHz in the United States is open to fixed forwarding stations after notice', async () => {
  const [line, ...rest] = await found('simplex: 219.500, mode: packet, width: 25');
  expect(line).toMatch(/^channels\.3\.simplex: 219\.500 MHz .*fixed point-to-point.*30 days/);
  expect(rest).toEqual([]);
});

// RBR-4 Issue 3, schedule I: 220-222 MHz in exceptional circumstances, for disaster relief.
test('220-222 MHz in Canada is for disaster relief, the rest of the band is not', async () => {
  expect(await found('simplex: 221.000', canada)).toEqual([
    'channels.3.simplex: 221.000 MHz is open on a condition that a plan cannot show: only in exceptional circumstances, for disaster relief.',
  ]);
  expect(await found('simplex: 223.500', canada)).toEqual([]);
  expect(await found('simplex: 219.500', canada)).toEqual([]);
});

test('a repeater with both ends there is found once', async () => {
  const relay = 'repeaters:\n  gap: { name: Relay, output: 221.500, input: 220.500, tone: 100.0, width: 25 }';
  expect(await found('simplex: 146.550', canada, relay)).toHaveLength(1);
});

test('what holds in every band of a country is for its caution, and no finding', async () => {
  const europe = underRules('eu', 'Europe/Berlin');
  const australia = underRules('au', 'Australia/Sydney');
  expect(await found('simplex: 145.500', europe)).toEqual([]);
  expect(await found('simplex: 146.500', australia)).toEqual([]);
});
