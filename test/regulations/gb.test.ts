import { expect, test } from 'vitest';
import { bandPlanAt } from '../../src/regulations/band-plan.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import { unitedKingdom } from '../../src/regulations/gb.ts';
import { identification, type Law } from '../../src/regulations/law.ts';
import { mayTransmit } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { usualOffset } from '../../src/regulations/usual-offset.ts';

const law: Law = { country: unitedKingdom, local: [] };

// Ofcom statement on the licensing framework, December 2023; by band an unofficial guide written after 21 February 2024.
test.each([
  ['foundation', '145.5', 25, 'output'],
  ['intermediate', '145.5', 100, 'output'],
  ['full', '145.5', 1000, 'output'],
  ['full', '51.5', 100, 'output'],
  ['full', '70.45', 160, 'output'],
  ['intermediate', '431', 40, 'erp'],
  ['full', '431', 40, 'erp'],
  ['intermediate', '433.5', 100, 'output'],
  ['full', '433.5', 400, 'output'],
  ['intermediate', '1297.5', 50, 'output'],
  ['full', '1297.5', 400, 'output'],
])('%s at %s MHz: %d W (%s)', (licenceClass, at, watts, measure) => {
  const limit = powerLimit(law, {
    service: 'amateur',
    frequencyHz: mhz(at),
    station: 'base',
    kind: 'phone',
    licenceClass,
  });
  expect([limit?.maxW, limit?.measure]).toEqual([watts, measure]);
});

test('Foundation does not have 23 cm, and 431-432 MHz is closed about London', () => {
  const at = { service: 'amateur', widthHz: 11_000, kind: 'phone' } as const;
  expect(mayTransmit(law, { ...at, licenceClass: 'foundation', frequencyHz: mhz('1297.5') })).toMatchObject({
    why: 'class',
  });
  expect(
    mayTransmit(law, { ...at, licenceClass: 'full', frequencyHz: mhz('431.5'), at: [51.5, 0.1] }),
  ).toMatchObject({ why: 'area' });
  expect(
    mayTransmit(law, { ...at, licenceClass: 'full', frequencyHz: mhz('431.5'), at: [53.5, -2.2] }).may,
  ).toBe(true);
});

// RSGB 70 cm band plan (2018 and 2025) and IARU Region 1 designators.
test.each([
  ['RU240', '433.000', '434.600'],
  ['RU270', '433.375', '434.975'],
  ['RU65', '430.8125', '438.4125'],
  ['RU78', '430.975', '438.575'],
])('the British repeater %s is heard on %s and has its input on %s', (name, output, input) => {
  const search = channelByName(law, name);
  expect(search.found && [search.channel.receiveHz, search.channel.transmitHz]).toEqual([
    mhz(output),
    mhz(input),
  ]);
  expect(usualOffset(law, mhz(output))?.usualHz).toContain(mhz(input) - mhz(output));
});

test('433.000-433.375 holds outputs in Britain, where the continent has inputs', () => {
  expect(bandPlanAt(law, mhz('433.100'))[0]?.use).toBe('repeater-output');
  expect(bandPlanAt(law, mhz('434.700'))[0]?.use).toBe('repeater-input');
});

// Licence section 6 clause 21(b): no number of minutes any more.
test('a call sign is given as often as is practicable, with no number of minutes', () => {
  expect(identification(law, 'amateur')?.everyMin).toBeUndefined();
  expect(identification(law, 'amateur')?.how).toMatch(/as often as is practicable/);
});

// From memory: 27.60125 MHz and every 10 kHz up, 40 channels.
// From memory: eleven pieces between 5.2585 and 5.4065 MHz, for Full alone, 100 W.
test('Full has eleven pieces of 60 m, other classes none', () => {
  const rows = unitedKingdom.allocations.filter(({ band }) => band === '60 m');
  expect(rows).toHaveLength(11);
  expect(rows.every(({ classes, fromMemory }) => fromMemory && classes?.join() === 'full')).toBe(true);
  expect([rows[0]?.fromHz, rows.at(-1)?.toHz]).toEqual([mhz('5.2585'), mhz('5.4065')]);
});

test('UK CB 1 and 40', () => {
  const at = (n: number) => unitedKingdom.channels.find(({ name }) => name === `UK CB ${n}`);
  expect([at(1)?.receiveHz, at(40)?.receiveHz]).toEqual([mhz('27.60125'), mhz('27.99125')]);
  expect(at(1)?.fromMemory).toBe(true);
});
