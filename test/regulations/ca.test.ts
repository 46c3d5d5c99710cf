import { expect, test } from 'vitest';
import { canada } from '../../src/regulations/ca.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import { identification, type Law, sourceOf } from '../../src/regulations/law.ts';
import { mayTransmit } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { usualOffset } from '../../src/regulations/usual-offset.ts';
import { widthLimit } from '../../src/regulations/width-limit.ts';
import { canadaTable } from '../sources/regulations/ca-band-plan.ts';
import { cbTable } from '../sources/regulations/cb-channels.ts';
import { frsTable } from '../sources/regulations/us-frs.ts';

const law: Law = { country: canada, local: [] };

// RBR-4 Issue 3 section 10, RF output into a matched load.
test.each([
  ['basic', 'fm', 190],
  ['basic', 'ssb', 560],
  ['basic-honours', 'fm', 190],
  ['advanced', 'fm', 750],
  ['advanced', 'ssb', 2250],
] as const)('%s with %s: %d W', (licenceClass, modulation, watts) => {
  const limit = powerLimit(law, {
    service: 'amateur',
    frequencyHz: mhz('146.94'),
    station: 'base',
    kind: 'phone',
    licenceClass,
    modulation,
  });
  expect(limit?.maxW).toBe(watts);
});

// RBR-4 Issue 3 Schedule I.
test.each([
  ['52', 30_000],
  ['146.94', 30_000],
  ['223.5', 100_000],
  ['446', 12_000_000],
  ['915', 12_000_000],
  ['29.6', 20_000],
  ['10.12', 1_000],
  ['14.2', 6_000],
  ['5.36', 2_800],
])('at %s MHz a signal is at most %d Hz wide', (at, widthHz) => {
  expect(widthLimit(law, { service: 'amateur', frequencyHz: mhz(at), kind: 'phone' })?.maxWidthHz).toBe(
    widthHz,
  );
});

test('Basic alone has nothing below 30 MHz; with Honours or Morse it has', () => {
  const at = { service: 'amateur', frequencyHz: mhz('29.6'), widthHz: 11_000, kind: 'phone' } as const;
  expect(mayTransmit(law, { ...at, licenceClass: 'basic' })).toMatchObject({ why: 'class' });
  expect(mayTransmit(law, { ...at, licenceClass: 'basic-honours' }).may).toBe(true);
  expect(mayTransmit(law, { ...at, licenceClass: 'basic-morse' }).may).toBe(true);
});

// The dial of upper sideband stands 1.5 kHz below the centres 5.332, 5.348, 5.373 and 5.405 MHz; 23 cm is open
// to every qualification. Both from memory.
test('60 m has four channels beside its segment, and 23 cm is held', () => {
  const upper = {
    service: 'amateur',
    widthHz: 2_800,
    kind: 'phone',
    modulation: 'ssb',
    sideband: 'upper',
  } as const;
  for (const at of ['5.3305', '5.3465', '5.3715', '5.4035', '5.3570'])
    expect(mayTransmit(law, { ...upper, frequencyHz: mhz(at), licenceClass: 'advanced' }).may, at).toBe(true);
  expect(mayTransmit(law, { ...upper, frequencyHz: mhz('5.3400'), licenceClass: 'advanced' }).may).toBe(
    false,
  );
  expect(
    mayTransmit(law, {
      service: 'amateur',
      frequencyHz: mhz('1294.5'),
      widthHz: 16_000,
      kind: 'phone',
      licenceClass: 'basic',
    }).may,
  ).toBe(true);
});

// RBR-4 Issue 3 section 9.
test('stations identify at beginning and end and every 30 minutes', () => {
  expect(identification(law, 'amateur')).toMatchObject({ everyMin: 30, atStart: true, atEnd: true });
});

test('the 2 m plan of 1995 row by row', () => {
  for (const [band, from, to, use] of canadaTable) {
    const rows = canada.bandPlan.filter(
      (row) => row.band === band && row.fromHz === mhz(from) && row.toHz === mhz(to),
    );
    expect(
      rows.map((row) => row.use),
      `${from}-${to}`,
    ).toContain(use);
  }
});

test('offsets follow the blocks of the plan', () => {
  expect(['145.27', '146.94', '147.15', '444'].map((at) => usualOffset(law, mhz(at))?.usualHz[0])).toEqual([
    -600_000, -600_000, 600_000, 5_000_000,
  ]);
});

test('family radio has the frequencies of the United States, by either name, and no repeater inputs', () => {
  for (const [n, at, watts] of frsTable) {
    const search = channelByName(law, `GMRS ${n}`);
    expect(search.found && [search.channel.receiveHz, search.channel.repeaterInputHz]).toEqual([
      mhz(at),
      undefined,
    ]);
    const limit = powerLimit(law, {
      service: 'frs',
      frequencyHz: mhz(at),
      station: 'handheld',
      kind: 'phone',
    });
    // The powers are from memory, and say so.
    expect([limit?.maxW, limit && sourceOf(law, limit).fromMemory]).toEqual([watts, true]);
  }
  // SP 462/467 MHz Issue 2: the 467 MHz inputs were removed in August 2016.
  const input = mayTransmit(law, {
    service: 'frs',
    frequencyHz: mhz('467.675'),
    widthHz: 11_000,
    kind: 'phone',
  });
  expect(input).toMatchObject({ why: 'outside' });
  expect(channelByName(law, 'GMRS 28').found).toBe(false);
});

test('the General Radio Service has the 40 channels, 23 to 25 as corrected', () => {
  for (const [n, at] of cbTable) {
    const search = channelByName(law, `CB ${n}`);
    expect(search.found && search.channel.receiveHz).toBe(mhz(at));
  }
});
