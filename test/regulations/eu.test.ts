import { describe, expect, test } from 'vitest';
import { bandPlanAt } from '../../src/regulations/band-plan.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import { designatedHz } from '../../src/regulations/designated.ts';
import { europe } from '../../src/regulations/eu.ts';
import { unitedKingdom } from '../../src/regulations/gb.ts';
import { region1DesignatorHz } from '../../src/regulations/iaru-region-1/designator.ts';
import type { Law } from '../../src/regulations/law.ts';
import { mayTransmit, type Transmission } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { rastersAt, usualOffset } from '../../src/regulations/usual-offset.ts';
import { cbTable } from '../sources/regulations/cb-channels.ts';
import { region1Table } from '../sources/regulations/iaru-region-1-band-plan.ts';
import { designatorTable } from '../sources/regulations/iaru-region-1-channels.ts';
import { pmr446DigitalTable, pmr446Table } from '../sources/regulations/pmr446.ts';

const law: Law = { country: europe, local: [] };

function channel(name: string) {
  const search = channelByName(law, name);
  if (!search.found) throw new Error(`no ${name}`);
  return search.channel;
}

describe('IARU Region 1 band plans of 2020', () => {
  test('every published row is held, with its width', () => {
    for (const [band, from, to, khz] of region1Table) {
      // The copy read prints the repeater rows of 70 cm once; both halves of the plan are one list here.
      const row = europe.bandPlan.find(
        (r) => r.band === band && r.fromHz === mhz(from) && r.toHz === mhz(to),
      );
      expect(row, `${from}-${to}`).toBeDefined();
      expect(row?.maxWidthHz, `${from}-${to}`).toBe(khz === undefined ? undefined : khz * 1_000);
    }
  });

  test('144.450 lies among beacons of 0.5 kHz, 145.600 among repeater outputs, 145.500 is for calling', () => {
    expect(bandPlanAt(law, mhz('144.450'))[0]).toMatchObject({ use: 'beacon', maxWidthHz: 500 });
    expect(bandPlanAt(law, mhz('145.600'))[0]?.use).toBe('repeater-output');
    expect(bandPlanAt(law, mhz('145.500')).map(({ use }) => use)).toEqual(['calling', 'simplex']);
    // 16K0F3E is wider than the 12 kHz of the segment.
    expect(bandPlanAt(law, mhz('145.500'))[1]?.maxWidthHz).toBe(12_000);
  });

  test('145.570 stands on no 12.5 kHz channel of the V raster', () => {
    expect(rastersAt(law, mhz('145.570')).map(({ fits }) => fits)).toEqual([false]);
    expect(rastersAt(law, mhz('145.575')).map(({ fits }) => fits)).toEqual([true]);
  });

  test('the designators of the handbook', () => {
    for (const [designator, at] of designatorTable)
      expect(region1DesignatorHz(designator), designator).toBe(mhz(at));
    expect([region1DesignatorHz('V400'), region1DesignatorHz('X40'), region1DesignatorHz('RV')]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  // The handbook's table; RB1 is a name of the United Kingdom, which alone has outputs there.
  test('the former names of channels', () => {
    for (const [designator, at, former] of designatorTable) {
      if (former === undefined) continue;
      const country = former.startsWith('RB') ? unitedKingdom : europe;
      const search = channelByName({ country, local: [] }, former);
      expect(search.found && [search.channel.name, search.channel.receiveHz], former).toEqual([
        designator,
        mhz(at),
      ]);
    }
  });

  // RB0 to RB15 are 433.000 to 433.375 MHz, 25 kHz apart (RSGB 70 cm plan of 2018).
  test('the British repeater channels by their former names', () => {
    for (let n = 0; n <= 15; n++) {
      const search = channelByName({ country: unitedKingdom, local: [] }, `RB${n}`);
      expect(search.found && search.channel.receiveHz, `RB${n}`).toBe(mhz('433.000') + 25_000 * n);
    }
  });

  // Emergency frequencies as a club of the Norwegian society lists them.
  test.each([
    ['51.510', 'phone'],
    ['144.800', 'data'],
    ['145.300', 'phone'],
    ['433.250', 'phone'],
  ])('%s MHz is for emergencies in Norway, and keeps what it is for elsewhere', (at, kind) => {
    const row = channel(`Norway emergency ${at}`);
    expect([row.receiveHz, row.transmitHz, row.kinds]).toEqual([mhz(at), mhz(at), [kind]]);
    expect(bandPlanAt(law, mhz(at))[0]?.use).not.toBe('emergency');
  });

  test('the Norwegian frequency below 70 MHz is only heard', () => {
    expect(channel('Norway emergency 69.975').transmitHz).toBeUndefined();
  });

  test('zeros tell a designator from a former name', () => {
    expect([channel('RU002').name, channel('RU2').name, channel('ru-0').name]).toEqual([
      'RU002',
      'RU372',
      'RU368',
    ]);
  });

  test('the numbering names frequencies that are no channel of the country', () => {
    for (const [designator, at, former] of designatorTable) {
      expect(designatedHz(law, designator)).toBe(mhz(at));
      if (former !== undefined) expect(designatedHz(law, former), former).toBe(mhz(at));
    }
    for (const none of ['V400', 'S7', 'R8', 'RB16', 'CB 9', ''])
      expect(designatedHz(law, none), none).toBeUndefined();
  });

  test.each([
    ['RV48', '145.600', '145.000'],
    ['RV60', '145.750', '145.150'],
    ['RU368', '434.600', '433.000'],
    ['RU692', '438.650', '431.050'],
    ['RU716', '438.950', '431.350'],
    ['RU002', '430.025', '431.625'],
    ['V40', '145.500', '145.500'],
    ['U280', '433.500', '433.500'],
  ])('%s: %s heard, %s sent', (name, output, input) => {
    expect([channel(name).receiveHz, channel(name).transmitHz]).toEqual([mhz(output), mhz(input)]);
  });

  test('every repeater channel has an offset that the plan has as usual there', () => {
    for (const row of europe.channels.filter(({ name }) => /^R[VU]/.test(name))) {
      const offset = usualOffset(law, row.receiveHz);
      expect(offset?.usualHz, row.name).toContain((row.transmitHz ?? 0) - row.receiveHz);
    }
  });
});

describe('PMR446', () => {
  const pmr = (at: number, extra: Partial<Transmission> = {}) =>
    mayTransmit(law, { service: 'pmr446', frequencyHz: at, widthHz: 11_000, kind: 'phone', ...extra });

  test('16 channels as listed and by the formula 446.00625 + 0.0125 (n - 1)', () => {
    for (const [n, at] of pmr446Table) {
      expect(channel(`PMR ${n}`).transmitHz).toBe(mhz(at));
      expect(mhz(at)).toBe(446_006_250 + 12_500 * (n - 1));
    }
    expect([1, 8, 15, 16].map((n) => channel(`pmr${n}`).receiveHz)).toEqual(
      ['446.00625', '446.09375', '446.18125', '446.19375'].map(mhz),
    );
  });

  test('32 narrow digital channels as listed and by the formula 446.003125 + 0.00625 (k - 1)', () => {
    for (const [k, at] of pmr446DigitalTable) {
      expect(channel(`PMR digital ${k}`).transmitHz).toBe(mhz(at));
      expect(mhz(at)).toBe(446_003_125 + 6_250 * (k - 1));
    }
  });

  test('hand-held sets only, 0.5 W ERP, no base station and no repeater', () => {
    const at = mhz('446.00625');
    expect(pmr(at, { station: 'handheld' }).may).toBe(true);
    for (const station of ['base', 'mobile', 'repeater', 'fixed'] as const) {
      expect(pmr(at, { station }), station).toMatchObject({ may: false, why: 'station' });
    }
    expect(
      powerLimit(law, { service: 'pmr446', frequencyHz: at, station: 'handheld', kind: 'phone' }),
    ).toMatchObject({ maxW: 0.5, measure: 'erp' });
    expect(pmr(at, { widthHz: 16_000 })).toMatchObject({ why: 'width' });
    expect(pmr(mhz('446.18175'))).toMatchObject({ why: 'outside' }); // a misprint of channel 15
  });
});

test('the 40 channels of the CEPT citizens’ band', () => {
  for (const [n, at] of cbTable) expect(channel(`CB ${n}`).transmitHz).toBe(mhz(at));
});
