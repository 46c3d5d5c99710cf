import { expect, test } from 'vitest';
import { cbTable } from '../../sources/regulations/cb-channels.ts';
import { foundBy } from '../found-by.ts';
import { underRules } from '../under-rules.ts';

const channels = (figures: string) => `channels:
  1: { name: GAP, repeater: gap }
  3: { name: TALK, ${figures} }`;
const found = (figures: string, head = '') => foundBy('width/over-lawful', `${head}\n${channels(figures)}`);

// 47 CFR 97.305(c) and 97.307(f)(1): a modulation index of at most 1, in the phone segments below 29 MHz.
test.each(['1.9', '3.9', '7.2', '14.25', '18.15', '21.35', '24.95', '28.4'])(
  'FM of 25 kHz spacing is too wide at %s MHz, of 12.5 kHz it is not',
  async (at) => {
    expect(await found(`simplex: ${at}, width: 25`)).toHaveLength(1);
    expect(await found(`simplex: ${at}, width: 12.5`)).toEqual([]);
    expect(await found(`simplex: ${at}, mode: ssb`)).toEqual([]);
  },
);

test('FM of 25 kHz spacing is lawful at 29.6 MHz', async () => {
  expect(await found('simplex: 29.600, width: 25')).toEqual([]);
});

// Standards bulletin, issue 31, September 2011: 12.5 kHz equipment beside the older of 25 kHz, which has channels 1 to 40.
test('New Zealand admits 25 kHz on the older channels and not between them', async () => {
  const head = underRules('nz', 'Pacific/Auckland', 'prs');
  for (const n of [1, 9, 40]) expect(await found(`standard: PRS ${n}, width: 25`, head), `${n}`).toEqual([]);
  for (const n of [41, 60, 80])
    expect(await found(`standard: PRS ${n}, width: 25`, head), `${n}`).toHaveLength(1);
});

// FM is open on the citizens' band by 47 CFR 95.975(c), by the CEPT decision, and alone on 27/81.
test.each([
  ['us', 'America/New_York', 'CB'],
  ['eu', 'Europe/Berlin', 'CB'],
  ['gb', 'Europe/London', 'UK CB'],
])(
  'FM on every citizens’ band channel of %s is as wide as it may be, unless set to 12.5 kHz',
  async (rules, timezone, name) => {
    const head = underRules(rules, timezone, 'cb');
    for (const [n] of cbTable) {
      expect(await found(`standard: ${name} ${n}`, head), `${n}`).toEqual([]);
      expect(await found(`standard: ${name} ${n}, width: 10`, head), `${n}`).toEqual([]);
    }
    expect(await found(`standard: ${name} 19, width: 12.5`, head)).toHaveLength(1);
  },
);
