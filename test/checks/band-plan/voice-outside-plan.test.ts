import { expect, test } from 'vitest';
import { foundBy } from '../found-by.ts';
import { underRules } from '../under-rules.ts';

const europe = underRules('eu', 'Europe/Berlin').replaceAll(
  'radios: [handheld], at',
  'licences: { amateur: { class: cept, call: XX1XAA } }, radios: [handheld], at',
);
const found = (at: string, head = '', mode = 'fm') =>
  foundBy(
    'band-plan/voice-outside-plan',
    `${head}
channels:
  1: { name: GAP, repeater: gap }
  3: { name: TALK, simplex: ${at}, mode: ${mode}, width: 12.5 }`,
  );

// ARRL band plan: television from 420 MHz and 1295 MHz, translators, links.
test.each(['144.550', '223.650', '420.500', '427.250', '434.000', '439.500', '1295.300'])(
  'voice on %s MHz is against the plan of the United States',
  async (at) => {
    expect(await found(at)).toHaveLength(1);
    expect(await found(at, '', 'packet')).toEqual([]);
  },
);

// IARU Region 1: digital voice gateways, FM gateways, guard space, digital links.
test.each(['144.850', '144.970', '145.2875', '145.570', '430.500', '439.950'])(
  'voice on %s MHz is against the plan of Region 1',
  async (at) => {
    expect(await found(at, europe)).toHaveLength(1);
  },
);

test.each([
  ['146.550', ''],
  ['446.025', ''],
  ['145.250', europe],
  ['433.475', europe],
])('%s MHz is for voice', async (at, head) => {
  expect(await found(at, head)).toEqual([]);
});
