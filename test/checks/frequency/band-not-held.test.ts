import { expect, test } from 'vitest';
import { findingsOf } from '../findings-of.ts';
import { underRules } from '../under-rules.ts';

const found = async (at: string, head = '') =>
  (
    await findingsOf(`${head}
channels:
  1: { name: GAP, repeater: gap }
  3: { name: TALK, simplex: ${at}, mode: ssb }`)
  )
    .filter(({ rule, path }) => rule.startsWith('frequency/') && path[0] === 'channels')
    .map(({ rule, severity }) => `${severity} ${rule}`);

const newZealand = underRules('nz', 'Pacific/Auckland');
const australia = underRules('au', 'Australia/Sydney');
const europe = underRules('eu', 'Europe/Berlin');

// ITU Radio Regulations, Article 5: bands of the amateur service in all three regions.
test.each([
  ['5.360', newZealand],
  ['5.360', australia],
  ['2305.000', ''],
  ['2320.000', europe],
  ['10368.000', newZealand],
])('at %s MHz the band is said to be one that the rules do not hold', async (at, head) => {
  expect(await found(at, head)).toEqual(['warning frequency/band-not-held']);
});

// Parts of a band that a country does not have, and bands of one region alone.
test.each([
  ['147.500', europe],
  ['5.340', ''],
  ['1.950', australia],
  ['223.500', europe],
  ['70.200', ''],
])('at %s MHz nobody may transmit', async (at, head) => {
  expect(await found(at, head)).toEqual(['error frequency/outside-allocation']);
});

test('a repeater there is found once', async () => {
  const findings = await findingsOf(`
repeaters:
  gap: { name: Relay, call: W4XGP, output: 2410.000, input: 2430.000, tone: 100.0, width: 25 }`);
  expect(findings.filter(({ path }) => path[0] === 'repeaters').map(({ rule }) => rule)).toContain(
    'frequency/band-not-held',
  );
  expect(findings.filter(({ rule }) => rule.includes('outside'))).toEqual([]);
});
