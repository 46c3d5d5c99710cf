import { describe, expect, test } from 'vitest';
import { radiatedW } from '../../src/consequences/use.ts';
import { example } from './example.ts';

/** One member with every licence named, one radio that can do anything certified for these services, one channel. */
async function useWith(parts: {
  licences: string;
  certified?: string;
  channel: string;
  radio?: string;
  rules?: string;
}) {
  const { consequences } = await example(`
${parts.rules ?? ''}
radios:
  any:
    name: Any
    transmits: [1-1300]
    receives: [1-1300]
    certified: [${parts.certified ?? 'amateur, gmrs, frs, murs, cb'}]
    memories: 1-10
    tones: [ctcss, dcs]
    modes: [fm, am, ssb, cw, packet]
    ${parts.radio ?? 'powers: { high: 5 W, low: 500 mW }'}
    antenna: { gain: 0 dBd, carried: hand }
members:
  ada: { name: Ada, licences: { ${parts.licences} }, radios: [any] }
channels:
  1: { name: ONE, ${parts.channel} }
`);
  const use = consequences.use('ada', 'any', 1);
  if (!use) throw new Error('no such use');
  return use;
}

const amateur = (licenceClass: string, expires = '2033-02-01') =>
  `amateur: { class: ${licenceClass}, call: KX4XAA, expires: ${expires} }`;

describe('who may transmit, by licence class (47 CFR 97.301 and 97.305)', () => {
  test.each([
    ['technician', 'simplex: 146.52', 'transmit'],
    ['technician', 'simplex: 446.0', 'transmit'],
    ['technician', 'simplex: 223.5', 'transmit'],
    ['technician', 'simplex: 52.525', 'transmit'],
    ['technician', 'simplex: 14.25, mode: ssb', 'listen only'],
    ['general', 'simplex: 14.25, mode: ssb', 'transmit'],
    ['general', 'simplex: 14.2, mode: ssb', 'listen only'],
    ['extra', 'simplex: 14.2, mode: ssb', 'transmit'],
    // On 80 m the lower sideband is used: 3.801 fills 3.7982 to 3.801, of which a General may not use the lower part.
    ['general', 'simplex: 3.801, mode: ssb', 'listen only'],
    ['general', 'simplex: 3.804, mode: ssb', 'transmit'],
    ['general', 'simplex: 3.999, mode: ssb', 'transmit'],
    ['advanced', 'simplex: 14.18, mode: ssb', 'transmit'],
    ['advanced', 'simplex: 14.16, mode: ssb', 'listen only'],
  ] as const)('a %s on %s: %s', async (licenceClass, channel, may) => {
    const use = await useWith({ licences: amateur(licenceClass), channel });
    expect(use.may, use.reasons.map(({ text }) => text).join('; ')).toBe(may);
  });
});

describe('what else stands between a member and a channel', () => {
  test('no licence: listen only, and the reason says what must be held', async () => {
    const use = await useWith({ licences: '', channel: 'simplex: 146.55' });
    expect(use.may).toBe('listen only');
    expect(use.reasons.map(({ code }) => code)).toEqual(['unlicensed']);
  });

  test('a licence that ends before the plan takes effect counts no more; on its last day it does', async () => {
    const before = await useWith({ licences: amateur('general', '2026-11-30'), channel: 'simplex: 146.55' });
    expect(before.reasons.map(({ code }) => code)).toEqual(['expired']);
    const last = await useWith({ licences: amateur('general', '2026-12-01'), channel: 'simplex: 146.55' });
    expect(last.may).toBe('transmit');
  });

  test('the weather broadcast is listened to by anybody', async () => {
    const use = await useWith({ licences: '', channel: 'listen: 162.55' });
    expect(use.may).toBe('listen only');
  });

  test('an amateur set is not certified for GMRS (47 CFR 95.1761), whatever its holder may do', async () => {
    const use = await useWith({
      licences: 'gmrs: { call: WZZZ401 }',
      certified: 'amateur',
      channel: 'standard: GMRS 20',
    });
    expect(use.may).toBe('listen only');
    expect(use.reasons.map(({ code }) => code)).toContain('not-certified');
  });

  test('FRS asks for no licence (47 CFR part 95 subpart B), and shares its frequencies with GMRS', async () => {
    const use = await useWith({
      licences: '',
      certified: 'frs',
      channel: 'standard: GMRS 3, width: 12.5',
      radio: 'powers: { high: 2 W }',
    });
    expect([use.may, use.service]).toEqual(['transmit', 'frs']);
  });

  test('a radio without a slot of that number does not hold the channel', async () => {
    const { consequences } = await example(`
channels:
  999: { name: FAR, simplex: 146.55 }
check-ins: {}
fallbacks: {}
`);
    expect(consequences.use('ada', 'handheld', 999)?.may).toBe('not held');
  });

  test('a tone the radio cannot send leaves it listening', async () => {
    const { consequences } = await example(`
radios:
  handheld: { name: Handheld, transmits: [144-148], receives: [136-174], certified: [amateur], memories: 1-10, tones: [ctcss], widths: [25, 12.5] }
repeaters:
  gap: { name: Gap, call: W4XGP, output: 146.940, offset: -0.6, tone: D023N }
`);
    const use = consequences.use('ada', 'handheld', 1);
    expect([use?.may, use?.reasons.map(({ code }) => code)]).toEqual(['listen only', ['tone']]);
  });
});

describe('the power setting is the highest within the law', () => {
  test('MURS allows 2 W of transmitter output (47 CFR 95.2767)', async () => {
    const use = await useWith({
      licences: '',
      channel: 'standard: MURS 3',
      radio: 'powers: { high: 5 W, mid: 2 W, low: 500 mW }',
    });
    expect(use.setting).toEqual({ name: 'mid', powerW: 2 });
  });

  test('on a 467 MHz interstitial GMRS channel 0.5 W ERP holds (47 CFR 95.1767)', async () => {
    const use = await useWith({
      licences: 'gmrs: { call: WZZZ401 }',
      certified: 'gmrs',
      channel: 'standard: GMRS 10',
    });
    expect(use.setting?.powerW).toBe(0.5);
  });

  test('without any setting low enough the member listens', async () => {
    const use = await useWith({ licences: '', channel: 'standard: MURS 3', radio: 'powers: { high: 5 W }' });
    expect([use.may, use.reasons.map(({ code }) => code)]).toEqual(['listen only', ['power']]);
  });

  test('what the plan asks for is used where the law allows it', async () => {
    const use = await useWith({ licences: amateur('general'), channel: 'simplex: 146.55, power: low' });
    expect(use.setting?.name).toBe('low');
  });
});

test('ERP is output times gain over a dipole, less the feed (47 CFR 2.1): 10 W, 6 dBd, 3 dB lost, is 20 W', () => {
  expect(radiatedW(10, { gainDbi: 8.15, feedLossDb: 3 }, 'erp', 146e6)).toBeCloseTo(19.95, 2);
  expect(radiatedW(10, { gainDbi: 2.15 }, 'erp', 146e6)).toBeCloseTo(10, 9);
  // EIRP = 1.64 × ERP: the dipole's gain, 2.15 dB.
  expect(radiatedW(10, { gainDbi: 2.15 }, 'eirp', 146e6)).toBeCloseTo(16.4, 1);
  expect(radiatedW(10, { gainDbi: 9 }, 'output', 146e6)).toBe(10);
  // 30 m of RG-213 lose 2.64 dB at 146 MHz (8.8 dB a hundred metres), connectors apart.
  const line = { gainDbi: 2.15, feed: { line: 'rg-213', lengthM: 30 } } as const;
  const lossDb = -10 * Math.log10(radiatedW(10, line, 'erp', 146e6) / 10);
  expect(lossDb).toBeGreaterThan(2.64);
  expect(lossDb).toBeLessThan(3.3);
});
