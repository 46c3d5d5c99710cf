import { describe, expect, test } from 'vitest';
import { allocationsAt, classesAt, listenOnlyAt } from '../../src/regulations/allocations.ts';
import { areasAt } from '../../src/regulations/areas-at.ts';
import { barredStation } from '../../src/regulations/barred-station.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import { identification, type Law } from '../../src/regulations/law.ts';
import { mayTransmit, type Transmission } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { serviceOf } from '../../src/regulations/service-of.ts';
import { unitedStates } from '../../src/regulations/us.ts';
import { rastersAt, usualOffset } from '../../src/regulations/usual-offset.ts';
import { widthLimit } from '../../src/regulations/width-limit.ts';
import { cbTable } from '../sources/regulations/cb-channels.ts';
import { privilegesTable } from '../sources/regulations/us-amateur-privileges.ts';
import {
  auxiliaryBarred,
  phoneAndData,
  powers,
  repeaterBarred,
} from '../sources/regulations/us-amateur-rules.ts';
import { bandPlanTable } from '../sources/regulations/us-band-plan.ts';
import { frsTable } from '../sources/regulations/us-frs.ts';
import { gmrsTable } from '../sources/regulations/us-gmrs.ts';
import { interoperabilityTable } from '../sources/regulations/us-interoperability.ts';
import { mursTable } from '../sources/regulations/us-murs.ts';
import { weatherTable } from '../sources/regulations/us-weather.ts';

const law: Law = { country: unitedStates, local: [] };

const amateur = (licenceClass: string, frequency: string, extra: Partial<Transmission> = {}) =>
  mayTransmit(law, {
    service: 'amateur',
    licenceClass,
    frequencyHz: mhz(frequency),
    widthHz: 3_000,
    kind: 'phone',
    ...extra,
  });
const why = (answer: ReturnType<typeof mayTransmit>) => (answer.may ? 'may' : answer.why);
const upper = { sideband: 'upper', modulation: 'ssb' } as const;
const morse = { kind: 'cw', widthHz: 150 } as const;

function channel(name: string) {
  const search = channelByName(law, name);
  if (!search.found) throw new Error(`no ${name}`);
  return search.channel;
}

describe('47 CFR 97.301, privileges by class', () => {
  test('every published segment of every class is allocated, to both its edges', () => {
    for (const [band, operatorClass, from, to] of privilegesTable) {
      const inside = allocationsAt(law, (mhz(from) + mhz(to)) / 2).some(
        (row) =>
          row.band === band &&
          row.fromHz === mhz(from) &&
          row.toHz === mhz(to) &&
          (row.classes?.includes(operatorClass) ?? true),
      );
      expect(inside, `${operatorClass} ${from}-${to}`).toBe(true);
    }
  });

  test('no class has a segment that is not published', () => {
    for (const row of unitedStates.allocations.filter(({ band }) => band !== '60 m')) {
      for (const operatorClass of row.classes ?? []) {
        const published = privilegesTable.some(
          ([, c, from, to]) => c === operatorClass && mhz(from) === row.fromHz && mhz(to) === row.toHz,
        );
        expect(published, `${operatorClass} ${row.fromHz}-${row.toHz}`).toBe(true);
      }
    }
  });

  test('a Technician has the six FM calling frequencies and not 14.250', () => {
    for (const at of ['146.52', '446.0', '223.5', '52.525', '927.5', '1294.5']) {
      expect(classesAt(law, 'amateur', mhz(at)), at).toContain('technician');
    }
    expect(classesAt(law, 'amateur', mhz('14.250'))).toEqual(['general', 'advanced', 'extra']);
    expect(why(amateur('technician', '14.250'))).toBe('class');
  });

  test.each([
    ['general', '7.180', 'may'],
    ['general', '7.150', 'class'],
    ['general', '14.230', 'may'],
    ['general', '14.200', 'class'],
    ['general', '3.850', 'may'],
    ['general', '3.750', 'class'],
    ['general', '21.300', 'may'],
    ['general', '21.250', 'class'],
    ['advanced', '14.180', 'may'],
    ['advanced', '14.160', 'class'],
    ['advanced', '3.750', 'may'],
    ['advanced', '3.650', 'class'],
  ])('phone of class %s at %s MHz: %s', (licenceClass, at, expected) => {
    expect(why(amateur(licenceClass, at))).toBe(expected);
  });
});

describe('47 CFR 97.305 and 97.307, emissions', () => {
  test('phone and data are admitted segment by segment as published', () => {
    for (const [from, to, phone, data] of phoneAndData) {
      const at = {
        service: 'amateur',
        licenceClass: 'extra',
        frequencyHz: (mhz(from) + mhz(to)) / 2,
        widthHz: 2_500,
      };
      expect(mayTransmit(law, { ...at, kind: 'phone' }).may, `phone ${from}-${to}`).toBe(phone);
      expect(mayTransmit(law, { ...at, kind: 'data' }).may, `data ${from}-${to}`).toBe(data);
    }
  });

  test('a Technician has single sideband on 28.3-28.5 MHz, no other phone, and Morse alone on 40 m', () => {
    expect(why(amateur('technician', '28.400', upper))).toBe('may');
    expect(why(amateur('technician', '28.400', { modulation: 'fm' }))).toBe('modulation');
    expect(why(amateur('technician', '28.250', upper))).toBe('kind');
    expect(why(amateur('technician', '28.510', upper))).toBe('class');
    expect(why(amateur('technician', '28.498', upper))).toBe('edge');
    expect(why(amateur('technician', '7.050', morse))).toBe('may');
    expect(why(amateur('technician', '7.050'))).toBe('kind');
    expect(why(amateur('technician', '7.050', { kind: 'data', widthHz: 500 }))).toBe('kind');
  });

  test('Morse is admitted wherever a class has the frequency', () => {
    for (const [, operatorClass, from, to] of privilegesTable) {
      if (from === '219') continue; // fixed data systems only
      const at = String((mhz(from) + mhz(to)) / 2 / 1e6);
      expect(why(amateur(operatorClass, at, morse)), `${operatorClass} ${at}`).toBe('may');
    }
  });

  test('the whole signal stays inside: NCVEC Extra pool E1A01 and E1A03', () => {
    expect(why(amateur('extra', '14.348', upper))).toBe('edge');
    expect(why(amateur('extra', '14.347', upper))).toBe('may');
    const digital = { kind: 'data', widthHz: 2_800, sideband: 'upper' } as const;
    expect(why(amateur('extra', '14.1472', digital))).toBe('may');
    expect(why(amateur('extra', '14.1473', digital))).toBe('edge');
  });

  test('60 m: any place in the segment, four channels at their centre, nothing between', () => {
    expect(why(amateur('general', '5.360', { widthHz: 2_800 }))).toBe('may');
    expect(why(amateur('general', '5.3305', { ...upper, widthHz: 2_800 }))).toBe('may'); // dial of 5.332
    expect(why(amateur('general', '5.332', morse))).toBe('may');
    expect(why(amateur('general', '5.333', morse))).not.toBe('may');
    expect(why(amateur('general', '5.340', { widthHz: 2_800 }))).toBe('outside');
    expect(why(amateur('general', '5.360', { widthHz: 3_000 }))).toBe('width');
    expect(why(amateur('technician', '5.360', { widthHz: 2_800 }))).toBe('class');
  });

  test('data is 20 kHz wide at most on 2 m, 100 kHz on 70 cm, 2.8 kHz on HF', () => {
    const width = (at: string) =>
      widthLimit(law, { service: 'amateur', frequencyHz: mhz(at), kind: 'data' })?.maxWidthHz;
    expect([width('145.01'), width('441'), width('14.1'), width('915')]).toEqual([
      20_000,
      100_000,
      2_800,
      undefined,
    ]);
    expect(
      widthLimit(law, { service: 'amateur', frequencyHz: mhz('146.94'), kind: 'phone' }),
    ).toBeUndefined();
  });

  test('a segment edge that two rows share does not cut a class in two', () => {
    // 3.600 is an edge of 80 m and 75 m; an Extra holds both sides of it.
    expect(why(amateur('extra', '3.600', morse))).toBe('may');
  });
});

describe('47 CFR 97.313, power', () => {
  test.each(powers)('%s at %s MHz: %d W (%s)', (licenceClass, at, watts, measure) => {
    const limit = powerLimit(law, {
      service: 'amateur',
      frequencyHz: mhz(at),
      station: 'base',
      licenceClass,
      kind: 'phone',
    });
    expect([limit?.maxW, limit?.measure]).toEqual([watts, measure]);
  });

  test('a beacon has 100 W, spread spectrum 10 W, the areas of 2.106(c)(270) 50 W on 70 cm', () => {
    const at = { service: 'amateur', licenceClass: 'general', station: 'base' } as const;
    expect(powerLimit(law, { ...at, frequencyHz: mhz('144.28'), station: 'beacon', kind: 'cw' })?.maxW).toBe(
      100,
    );
    expect(powerLimit(law, { ...at, frequencyHz: mhz('441'), kind: 'spread-spectrum' })?.maxW).toBe(10);
    expect(powerLimit(law, { ...at, frequencyHz: mhz('441'), kind: 'phone', at: [28, -82] })?.maxW).toBe(50); // Florida
    expect(powerLimit(law, { ...at, frequencyHz: mhz('441'), kind: 'phone', at: [36.6, -84.2] })?.maxW).toBe(
      1500,
    ); // Kentucky
  });
});

describe('47 CFR 97.201 and 97.205, repeaters and auxiliary stations', () => {
  const bars = (station: 'repeater' | 'auxiliary', at: string) =>
    barredStation(law, station, mhz(at) - 8_000, mhz(at) + 8_000) !== undefined;

  test('the barred segments are the published ones, and no others above the lowest band', () => {
    const rows = (station: 'repeater' | 'auxiliary', above: string) =>
      unitedStates.barredStations
        .filter((row) => row.stations.includes(station) && row.fromHz >= mhz(above))
        .map((row) => [row.fromHz, row.toHz]);
    expect(rows('repeater', '28')).toEqual(repeaterBarred.map((row) => row.map(mhz)));
    expect(rows('auxiliary', '144')).toEqual(auxiliaryBarred.map((row) => row.map(mhz)));
  });

  test.each(['146.94', '146.34', '147.06', '147.66', '444.0', '449.0', '224.9', '223.3', '29.62', '29.52'])(
    'a repeater may be on %s',
    (at) => {
      expect(bars('repeater', at)).toBe(false);
      expect(
        why(
          amateur('technician', at === '29.62' || at === '29.52' ? '444.0' : at, {
            widthHz: 16_000,
            station: 'repeater',
          }),
        ),
      ).toBe('may');
    },
  );

  test.each(['145.6', '145.9', '144.3', '431.5', '436', '50.5', '222.1', '28.5'])(
    'a repeater may not be on %s',
    (at) => {
      expect(bars('repeater', at)).toBe(true);
      expect(why(amateur('extra', at, { widthHz: 6_000, station: 'repeater' }))).toBe('station');
    },
  );

  test('an auxiliary station is barred on 145.9 and free on 145.6, where a repeater is barred', () => {
    expect([bars('auxiliary', '145.9'), bars('auxiliary', '145.6'), bars('repeater', '145.6')]).toEqual([
      true,
      false,
      true,
    ]);
  });

  test('a repeater output on 145.500 spills past the edge, though its carrier is on it', () => {
    expect(bars('repeater', '145.500')).toBe(true);
    expect(bars('repeater', '145.490')).toBe(false);
  });

  test('an APRS digipeater on 144.390 is no repeater', () => {
    expect(
      why(amateur('technician', '144.390', { kind: 'data', widthHz: 16_000, station: 'digipeater' })),
    ).toBe('may');
    expect(why(amateur('general', '14.105', { kind: 'data', widthHz: 2_000, station: 'digipeater' }))).toBe(
      'may',
    );
    expect(why(amateur('general', '14.080', { kind: 'data', widthHz: 2_000, station: 'digipeater' }))).toBe(
      'station',
    );
  });
});

describe('the voluntary band plan', () => {
  test('every published segment is a row, kept for what is published', () => {
    for (const [band, from, to, use] of bandPlanTable) {
      const rows = unitedStates.bandPlan.filter(
        (row) => row.band === band && row.fromHz === mhz(from) && row.toHz === mhz(to),
      );
      expect(
        rows.map((row) => row.use),
        `${from}-${to}`,
      ).toContain(use);
    }
  });

  test.each([['29.600'], ['52.525'], ['146.520'], ['223.500'], ['446.000'], ['927.500'], ['1294.500']])(
    '%s is a national FM simplex calling frequency',
    (at) => {
      const row = unitedStates.bandPlan.find(
        ({ fromHz, toHz, use }) => fromHz === mhz(at) && toHz === fromHz && use === 'calling',
      );
      expect(row?.label).toMatch(/FM simplex calling/);
    },
  );

  test.each([
    ['145.27', '144.67'],
    ['146.94', '146.34'],
    ['147.15', '147.75'],
    ['224.50', '222.90'],
    ['927.25', '902.25'],
    ['29.62', '29.52'],
    ['53.01', '52.51'],
    ['1283', '1271'],
  ])('an output on %s has its input on %s', (output, input) => {
    expect(usualOffset(law, mhz(output))?.usualHz[0]).toBe(mhz(input) - mhz(output));
  });

  test('70 cm goes either way by 5 MHz, and 147.000 either way by 0.6', () => {
    expect(usualOffset(law, mhz('444.000'))?.usualHz).toEqual([5_000_000, -5_000_000]);
    expect(usualOffset(law, mhz('147.000'))?.usualHz).toEqual([600_000, -600_000]);
    expect(usualOffset(law, mhz('147.030'))?.alsoHz).toContain(-600_000);
    expect(usualOffset(law, mhz('147.200'))?.alsoHz).not.toContain(-600_000);
  });

  test('the 15 kHz raster has 13 simplex channels from 146.400 and 11 from 147.420', () => {
    const steps = (from: string, to: string, step: number) =>
      unitedStates.rasters.filter(
        (row) => row.fromHz === mhz(from) && row.toHz === mhz(to) && row.stepsHz.includes(step),
      );
    expect(steps('146.400', '146.580', 15_000)).toHaveLength(1);
    expect((mhz('146.580') - mhz('146.400')) / 15_000 + 1).toBe(13);
    expect(steps('147.420', '147.570', 15_000)).toHaveLength(1);
    expect((mhz('147.570') - mhz('147.420')) / 15_000 + 1).toBe(11);
  });

  test('146.520 stands on the rasters of 15 and 20 kHz; 146.535 on that of 15; 146.530 on none', () => {
    const fits = (at: string) => rastersAt(law, mhz(at)).some((raster) => raster.fits);
    expect([fits('146.520'), fits('146.535'), fits('146.530')]).toEqual([true, true, false]);
    const row = rastersAt(law, mhz('146.520'))[0]?.row;
    expect((mhz('146.520') - (row?.fromHz ?? 0)) % 20_000).toBe(0);
    expect((mhz('146.535') - (row?.fromHz ?? 0)) % 20_000).not.toBe(0);
  });
});

describe('General Mobile Radio Service', () => {
  test('the 30 channels as published', () => {
    for (const [n, at, watts, measure, khz] of gmrsTable) {
      const row = channel(`GMRS ${n}`);
      expect([row.receiveHz, row.transmitHz, row.maxW, row.measure, row.maxWidthHz], row.name).toEqual([
        mhz(at),
        mhz(at),
        watts,
        measure,
        khz * 1_000,
      ]);
    }
    expect(unitedStates.channels.filter(({ service }) => service === 'gmrs')).toHaveLength(30);
  });

  test('the channels follow their four formulas, 25 kHz apart', () => {
    for (let n = 1; n <= 30; n++) {
      const [start, first] =
        n <= 7 ? ['462.5625', 1] : n <= 14 ? ['467.5625', 8] : n <= 22 ? ['462.550', 15] : ['467.550', 23];
      expect(channel(`GMRS ${n}`).receiveHz).toBe(mhz(String(start)) + 25_000 * (n - Number(first)));
    }
  });

  test('the eight repeater pairs are 5 MHz apart, input above output, and no other offset is lawful', () => {
    const pairs = unitedStates.channels.filter(
      (row) => row.service === 'gmrs' && row.repeaterInputHz !== undefined,
    );
    expect(pairs.map(({ name }) => name)).toEqual([15, 16, 17, 18, 19, 20, 21, 22].map((n) => `GMRS ${n}`));
    for (const row of pairs) expect((row.repeaterInputHz ?? 0) - row.receiveHz).toBe(mhz('5'));
    const offset = usualOffset(law, mhz('462.675'));
    expect([offset?.usualHz, offset?.alsoHz, offset?.fixed]).toEqual([[mhz('5')], [], true]);
    expect(channel('GMRS 20R').name).toBe('GMRS 28');
  });

  test('50 W on 20, 5 W ERP on 3, 0.5 W ERP on 10, 15 W for a fixed station', () => {
    const limit = (at: string, station: 'mobile' | 'handheld' | 'fixed') =>
      powerLimit(law, { service: 'gmrs', frequencyHz: mhz(at), station, kind: 'phone' });
    expect([limit('462.675', 'mobile')?.maxW, limit('462.675', 'mobile')?.measure]).toEqual([50, 'output']);
    expect(limit('467.675', 'handheld')?.maxW).toBe(50);
    expect([limit('462.6125', 'mobile')?.maxW, limit('462.6125', 'mobile')?.measure]).toEqual([5, 'erp']);
    expect(limit('467.6125', 'handheld')?.maxW).toBe(0.5);
    expect(limit('462.675', 'fixed')?.maxW).toBe(15);
  });

  test('a hand-held has 8 to 14, a base has not; digital voice has nothing', () => {
    const on = (at: string, extra: Partial<Transmission>) =>
      why(
        mayTransmit(law, { service: 'gmrs', frequencyHz: mhz(at), widthHz: 11_000, kind: 'phone', ...extra }),
      );
    expect(on('467.6125', { station: 'handheld' })).toBe('may');
    expect(on('467.6125', { station: 'base' })).toBe('station');
    expect(on('467.675', { station: 'repeater' })).toBe('station');
    expect(on('462.675', { station: 'repeater' })).toBe('may');
    expect(on('462.675', { modulation: 'digital' })).toBe('modulation');
    expect(on('467.6125', { widthHz: 16_000 })).toBe('width');
    expect(on('462.680', {})).toBe('outside');
  });

  test('the Line A closure of 19 and 21 is advice, since it was not read', () => {
    const rows = areasAt(law, 48.5, -100, mhz('462.650')).filter(({ service }) => service === 'gmrs');
    expect(rows.map(({ advisory, fromMemory }) => [advisory, fromMemory])).toEqual([[true, true]]);
    expect(areasAt(law, 36.6, -84.2, mhz('462.650'))).toEqual([]);
    expect(areasAt(law, 48.5, -100, mhz('462.675')).filter(({ service }) => service === 'gmrs')).toEqual([]);
  });
});

describe('the services without a licence', () => {
  test('the 22 FRS channels as published', () => {
    for (const [n, at, watts] of frsTable) {
      const row = channel(`FRS ${n}`);
      expect([row.receiveHz, row.transmitHz, row.maxW, row.measure, row.maxWidthHz], row.name).toEqual([
        mhz(at),
        mhz(at),
        watts,
        'erp',
        12_500,
      ]);
      expect(row.repeaterInputHz).toBeUndefined();
    }
    expect(unitedStates.channels.filter(({ service }) => service === 'frs')).toHaveLength(22);
  });

  test('an FRS set may not send on a repeater input', () => {
    expect(
      why(mayTransmit(law, { service: 'frs', frequencyHz: mhz('467.675'), widthHz: 11_000, kind: 'phone' })),
    ).toBe('outside');
  });

  test('the five MURS channels as published, at 2 W', () => {
    for (const [n, at, khz] of mursTable) {
      const row = channel(`MURS ${n}`);
      expect([row.receiveHz, row.transmitHz, row.maxWidthHz, row.maxW, row.measure]).toEqual([
        mhz(at),
        mhz(at),
        khz * 1_000,
        2,
        'output',
      ]);
    }
  });

  test('a wide signal is unlawful on MURS 3 and lawful on MURS 4, and a repeater on neither', () => {
    const murs = (at: string, extra: Partial<Transmission> = {}) =>
      why(
        mayTransmit(law, { service: 'murs', frequencyHz: mhz(at), widthHz: 16_000, kind: 'phone', ...extra }),
      );
    expect([murs('151.940'), murs('154.570')]).toEqual(['width', 'may']);
    expect([murs('154.570', { station: 'repeater' }), murs('154.570', { station: 'digipeater' })]).toEqual([
      'station',
      'station',
    ]);
  });

  test('the 40 CB channels as published, out of order at 23 to 25', () => {
    for (const [n, at] of cbTable) expect(channel(`CB ${n}`).transmitHz, `CB ${n}`).toBe(mhz(at));
    const spot = [9, 19, 23, 24, 40].map((n) => channel(`CB ${n}`).receiveHz);
    expect(spot).toEqual(['27.065', '27.185', '27.255', '27.235', '27.405'].map(mhz));
    expect(channel('CB 9').roleOnly).toBe(true);
  });

  test('CB has 4 W of AM or FM, 12 W of single sideband; what is not said counts as 4', () => {
    const at = { service: 'cb', frequencyHz: mhz('27.185'), station: 'mobile', kind: 'phone' } as const;
    expect(powerLimit(law, { ...at, modulation: 'am' })?.maxW).toBe(4);
    expect(powerLimit(law, { ...at, modulation: 'fm' })?.maxW).toBe(4);
    expect(powerLimit(law, { ...at, modulation: 'ssb' })?.maxW).toBe(12);
    expect(powerLimit(law, at)?.maxW).toBe(4);
    expect(widthLimit(law, { ...at, modulation: 'ssb' })?.maxWidthHz).toBe(4_000);
  });
});

describe('47 CFR part 95, equipment', () => {
  // 95.587(b), 95.935, 95.1761.
  test('sets of GMRS and CB are kept apart from amateur ones, of FRS from all but GMRS', () => {
    const apart = Object.fromEntries(
      unitedStates.services.map(({ id, certifiedApart }) => [id, certifiedApart?.from]),
    );
    expect(apart).toMatchObject({
      gmrs: ['amateur'],
      cb: ['amateur'],
      frs: ['amateur', 'murs', 'cb'],
      amateur: undefined,
      murs: undefined,
    });
  });

  // 95.941 and 95.2741: 60 and 20 feet.
  test('antennas of MURS and CB stand at most 60 feet above ground or 20 above what carries them', () => {
    const feet = 0.3048;
    for (const id of ['murs', 'cb']) {
      const height = unitedStates.services.find((service) => service.id === id)?.antennaHeight;
      expect(height?.aboveGroundM).toBeCloseTo(60 * feet, 1);
      expect(height?.aboveSupportM).toBeCloseTo(20 * feet, 1);
    }
  });

  // 95.2771 lists A3E, F3E and G3E for speech, and no J3E.
  test('MURS has speech by AM and FM, none by single sideband', () => {
    const speech = (modulation: 'am' | 'fm' | 'ssb') =>
      why(
        mayTransmit(law, {
          service: 'murs',
          frequencyHz: mhz('154.570'),
          widthHz: 6_000,
          kind: 'phone',
          modulation,
        }),
      );
    expect([speech('am'), speech('fm'), speech('ssb')]).toEqual(['may', 'may', 'modulation']);
  });
});

describe('what is only listened to, or needs leave', () => {
  test('the seven weather channels as published, 25 kHz apart, and nobody may transmit on them', () => {
    for (const [name, at] of weatherTable) {
      const row = channel(name);
      expect([row.receiveHz, row.transmitHz]).toEqual([mhz(at), undefined]);
      expect(
        why(mayTransmit(law, { service: 'weather', frequencyHz: mhz(at), widthHz: 16_000, kind: 'phone' })),
      ).toBe('listen-only');
      expect(serviceOf(law, mhz(at), mhz(at))).toEqual([]);
      expect(serviceOf(law, mhz(at), undefined)).toEqual(['weather']);
    }
    expect(weatherTable.map(([, at]) => mhz(at))).toEqual(
      Array.from({ length: 7 }, (_, k) => mhz('162.400') + 25_000 * k),
    );
  });

  test.each([
    ['156.800', /channel 16/],
    ['121.500', /aeronautical emergency/],
    ['123.100', /search and rescue/],
    ['162.475', /weather/],
  ])('%s is listened to only', (at, label) => {
    expect(listenOnlyAt(law, mhz(at))[0]?.label).toMatch(label);
    expect(allocationsAt(law, mhz(at))).toEqual([]);
  });

  test('the interoperability channels as the field guide has them', () => {
    for (const [name, receive, transmit, tone, khz] of interoperabilityTable) {
      const row = channel(name);
      expect([row.receiveHz, row.transmitHz, row.toneHz, row.maxWidthHz], name).toEqual([
        mhz(receive),
        mhz(transmit),
        tone,
        khz * 1_000,
      ]);
    }
    expect(unitedStates.channels.filter(({ service }) => service === 'interoperability')).toHaveLength(
      interoperabilityTable.length,
    );
  });

  test('an interoperability channel needs the written leave of an agency', () => {
    const vcall = {
      service: 'interoperability',
      frequencyHz: mhz('155.7525'),
      widthHz: 11_000,
      kind: 'phone',
    } as const;
    expect(why(mayTransmit(law, vcall))).toBe('needs-authority');
    expect(why(mayTransmit(law, { ...vcall, authorised: true }))).toBe('may');
  });
});

describe('places', () => {
  test('420-430 MHz is closed north of Line A: at 48.5 N 100 W, not at 47 N 100 W', () => {
    expect(why(amateur('general', '425', { at: [48.5, -100] }))).toBe('area');
    expect(why(amateur('general', '425', { at: [47, -100] }))).toBe('may');
    expect(why(amateur('general', '435', { at: [48.5, -100] }))).toBe('may');
  });

  test('Line A takes in Seattle, Detroit and Bangor’s north, not Portland, Chicago or Boston', () => {
    const north = (at: readonly [number, number]) =>
      areasAt(law, at[0], at[1], mhz('425')).some(({ area }) => area === 'north of Line A');
    const taken: readonly (readonly [number, number])[] = [
      [47.61, -122.33],
      [42.33, -83.05],
      [46.12, -67.84],
    ];
    const free: readonly (readonly [number, number])[] = [
      [45.52, -122.68],
      [41.88, -87.63],
      [42.36, -71.06],
    ];
    expect(taken.map(north)).toEqual([true, true, true]);
    expect(free.map(north)).toEqual([false, false, false]);
  });

  test('33 cm is closed by White Sands, and four slices of it in Colorado', () => {
    expect(why(amateur('general', '927.1', { at: [32.5, -106.5] }))).toBe('area');
    expect(why(amateur('general', '927.5', { at: [39.74, -104.99] }))).toBe('area');
    expect(why(amateur('general', '927.1', { at: [39.74, -104.99] }))).toBe('may');
    expect(why(amateur('general', '927.5', { at: [38.5, -104.99] }))).toBe('may');
  });
});

describe('identification', () => {
  test('amateurs every 10 minutes and at the end, GMRS every 15 and at the end, the rest not at all', () => {
    expect(identification(law, 'amateur')).toMatchObject({ everyMin: 10, atEnd: true });
    expect(identification(law, 'gmrs')).toMatchObject({ everyMin: 15, atEnd: true });
    expect(['frs', 'murs', 'cb'].map((service) => identification(law, service))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe('which service a pair belongs to', () => {
  test.each([
    ['146.940', '146.340', ['amateur']],
    ['462.675', '467.675', ['gmrs']],
    ['462.675', '462.675', ['gmrs', 'frs']],
    ['462.5625', '462.5625', ['gmrs', 'frs']],
    ['151.820', '151.820', ['murs']],
    ['27.185', '27.185', ['cb']],
    ['159.4725', '151.1375', ['interoperability']],
    ['155.000', '155.000', []],
  ])('%s heard, %s sent: %j', (receive, transmit, services) => {
    expect(serviceOf(law, mhz(receive), mhz(transmit))).toEqual(services);
  });
});
