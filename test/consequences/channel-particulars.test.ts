import { expect, test } from 'vitest';
import { underRules } from '../checks/under-rules.ts';
import { example } from './example.ts';

async function particulars(channel: string, sections = '') {
  const { consequences } = await example(`
${sections}
channels:
  1: { name: ONE, ${channel} }
`);
  const on = consequences.channels.get(1);
  if (!on) throw new Error(JSON.stringify(consequences.outcomes.get(1)));
  return on;
}

test('a repeater is heard on its output and sent to on its input', async () => {
  const on = await particulars('repeater: gap');
  expect([on.receiveHz, on.transmitHz, on.direction, on.offsetHz]).toEqual([
    146_940_000,
    146_340_000,
    'minus',
    600_000,
  ]);
  expect(on.tone).toEqual({ kind: 'ctcss', tenthsHz: 1000 });
});

// Pairs as the United States band plan has them: 145.27 -0.6, 147.15 +0.6, 224.50 -1.6, 927.25 -25.
test.each([
  ['145.27', '-0.6', 144_670_000, 'minus'],
  ['147.15', '0.6', 147_750_000, 'plus'],
  ['224.50', '-1.6', 222_900_000, 'minus'],
  ['927.25', '-25', 902_250_000, 'minus'],
] as const)(
  'output %s with offset %s is sent to in whole hertz',
  async (output, offset, input, direction) => {
    const on = await particulars(
      'repeater: gap',
      `repeaters:\n  gap: { name: Gap, output: ${output}, offset: ${offset} }`,
    );
    expect([on.transmitHz, on.direction]).toEqual([input, direction]);
  },
);

test('25 kHz FM is 16K0F3E and 12.5 kHz 11K0F3E (Carson; ITU RR Appendix 1)', async () => {
  expect((await particulars('simplex: 146.55, width: 25')).emission).toBe('16K0F3E');
  expect((await particulars('simplex: 146.55, width: 12.5')).emission).toBe('11K0F3E');
});

test('a published channel brings its frequency, and the spacing whose signal fits its width', async () => {
  // GMRS 20: 462.675, 20 kHz (47 CFR 95.1763, 95.1773). MURS 3: 151.940, 11.25 kHz (95.2763, 95.2773).
  const family = await particulars('standard: GMRS 20, tone: 141.3');
  expect([family.receiveHz, family.transmitHz, family.spacingHz, family.services[0]]).toEqual([
    462_675_000,
    462_675_000,
    25_000,
    'gmrs',
  ]);
  const yard = await particulars('standard: MURS 3');
  expect([yard.receiveHz, yard.spacingHz, yard.emission]).toEqual([151_940_000, 12_500, '11K0F3E']);
});

// Standards bulletin, issue 31, September 2011.
test('where older and wider sets are still admitted, the spacing is that of today’s', async () => {
  const head = underRules('nz', 'Pacific/Auckland', 'prs');
  for (const channel of ['standard: PRS 9', 'simplex: 476.625', 'standard: PRS 49'])
    expect((await particulars(channel, head)).spacingHz, channel).toBe(12_500);
});

// Channels 10 kHz apart: 47 CFR 95.963 and the CEPT decision.
test('a channel of the 27 MHz citizens’ band has their spacing', async () => {
  for (const [mode, emission] of [
    ['fm', '8K00F3E'],
    ['am', '6K00A3E'],
    ['ssb', '2K80J3E'],
  ]) {
    const on = await particulars(`standard: CB 19, mode: ${mode}`);
    expect([on.spacingHz, on.emission]).toEqual([10_000, emission]);
  }
});

test('a channel to listen to has nothing to transmit on, and sends no tone', async () => {
  const on = await particulars('listen: 162.55, tone: 100.0');
  expect([on.transmitHz, on.tone]).toEqual([undefined, undefined]);
});

test('a channel of a repeater that is not there is known to be unknown', async () => {
  const { consequences } = await example('channels:\n  1: { name: ONE, repeater: gone }');
  expect(consequences.outcomes.get(1)).toMatchObject({ known: false, missing: 'repeater', name: 'gone' });
});
