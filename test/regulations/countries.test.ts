import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classesAt } from '../../src/regulations/allocations.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import { countries, countryByCode } from '../../src/regulations/countries.ts';
import type { Country } from '../../src/regulations/country.ts';
import { countryFlaws } from '../../src/regulations/country-flaws.ts';
import { type Law, sourceOf } from '../../src/regulations/law.ts';
import { mayTransmit } from '../../src/regulations/may-transmit.ts';
import { powerLimits } from '../../src/regulations/power-limit.ts';
import { serviceOf } from '../../src/regulations/service-of.ts';

const loaded = await Promise.all(
  countries.map(async ({ code }): Promise<Country> => {
    const country = await countryByCode(code);
    if (!country) throw new Error(`no rules for ${code}`);
    return country;
  }),
);

test('there are rules for six countries, and none for a code that is not listed', async () => {
  expect(countries.map(({ code }) => code)).toEqual(['au', 'ca', 'eu', 'gb', 'nz', 'us']);
  expect(await countryByCode('zz')).toBeUndefined();
});

describe.each(loaded.map((country) => [country.name, country] as const))('%s', (_, country) => {
  const law: Law = { country, local: [] };

  test('its tables are sound', () => {
    expect(countryFlaws(country)).toEqual([]);
  });

  test('every source is dated, or says that it is from memory or has no date', () => {
    const silent = Object.values(country.sources).filter(
      ({ document, date, fromMemory }) =>
        date === undefined && !fromMemory && !document.includes('without a date'),
    );
    expect(silent).toEqual([]);
  });

  test('its code and name are the listed ones, and it carries a caution and a date', () => {
    expect(countries).toContainEqual({ code: country.code, name: country.name });
    expect(country.caution).toMatch(/[Nn]ot legal advice/);
    expect(country.asOf).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  test('a source has the date of the text that was read, or says what it is; a remembered one has no date', () => {
    for (const source of Object.values(country.sources)) {
      expect(source.document.length).toBeGreaterThan(3);
      if (source.date) expect(source.date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      if (source.fromMemory) expect(source.date).toBeUndefined();
    }
  });

  test('a row whose source is remembered says so itself, so that nothing remembered looks read', () => {
    const {
      allocations,
      emissions,
      widths,
      powers,
      bandPlan,
      offsets,
      channels,
      listenOnly,
      areas,
      services,
    } = country;
    const rows = [
      allocations,
      emissions,
      widths,
      powers,
      bandPlan,
      offsets,
      channels,
      listenOnly,
      areas,
      services,
    ].flat();
    for (const row of rows) {
      if (country.sources[row.source]?.fromMemory) expect(row.fromMemory, JSON.stringify(row)).toBe(true);
      if (row.fromMemory) expect(sourceOf(law, row).fromMemory).toBe(true);
    }
  });

  test('every channel is found by its name in any case and spacing, and belongs to its own service', () => {
    for (const row of country.channels) {
      for (const name of [row.name, row.name.toLowerCase(), row.name.replaceAll(' ', '')]) {
        const search = channelByName(law, name);
        expect(search.found && search.channel, name).toBe(row);
      }
      if (row.transmitHz !== undefined)
        expect(serviceOf(law, row.receiveHz, row.transmitHz)).toContain(row.service);
    }
  });

  test('a channel may be used as published by someone', () => {
    for (const row of country.channels.filter((r) => r.transmitHz !== undefined)) {
      const answer = mayTransmit(law, {
        service: row.service,
        frequencyHz: row.transmitHz ?? 0,
        widthHz: row.maxWidthHz / 4,
        kind: row.kinds[0] ?? 'phone',
        authorised: true,
      });
      expect(answer, row.name).toMatchObject({ may: true });
    }
  });

  test('whoever may transmit a signal may transmit a narrower one there, and holds the frequency', () => {
    const services = country.services.filter((service) => service.licence !== 'never');
    const places =
      country.allocations.length > 0
        ? country.allocations
        : country.channels.map((row) => ({ fromHz: row.receiveHz, toHz: row.receiveHz }));
    const question = fc.record({
      service: fc.constantFrom(...services),
      place: fc.constantFrom(...places),
      part: fc.double({ min: -0.1, max: 1.1, noNaN: true }),
      widthHz: fc.integer({ min: 10, max: 30_000 }),
      kind: fc.constantFrom('phone', 'data', 'cw', 'image'),
      pick: fc.nat(),
    });
    fc.assert(
      fc.property(question, ({ service, place, part, widthHz, kind, pick }) => {
        const frequencyHz = Math.round(place.fromHz + part * (place.toHz - place.fromHz));
        const licenceClass = service.classes[pick % Math.max(1, service.classes.length)]?.id;
        const asked = {
          service: service.id,
          frequencyHz,
          kind,
          authorised: true,
          ...(licenceClass && { licenceClass }),
        } as const;
        const wide = mayTransmit(law, { ...asked, widthHz });
        const narrow = mayTransmit(law, { ...asked, widthHz: Math.floor(widthHz / 2) });
        if (wide.may) {
          expect(narrow.may).toBe(true);
          if (licenceClass) expect(classesAt(law, service.id, frequencyHz)).toContain(licenceClass);
        } else {
          expect(wide.text.length).toBeGreaterThan(10);
        }
        for (const limit of powerLimits(law, { ...asked, station: 'base' }))
          expect(limit.maxW).toBeGreaterThan(0);
      }),
      { numRuns: 1_000 },
    );
  });
});

describe('an invented country needs no code', () => {
  const erewhon: Country = {
    code: 'xx',
    name: 'Erewhon',
    asOf: '2026-01-01',
    caution: 'Invented. Not legal advice.',
    exposure: 'icnirp',
    mainsHz: 50,
    sources: { act: { document: 'Wireless Act of Erewhon', section: 'table 1', date: '2026-01-01' } },
    services: [
      {
        id: 'amateur',
        name: 'Amateur Service',
        licence: 'personal',
        classes: [
          { id: 'lower', name: 'Lower' },
          { id: 'upper', name: 'Upper' },
        ],
        certifiedEquipment: false,
        callSigns: true,
        repeaters: true,
        storeAndForward: true,
        mustHold: 'a certificate',
        source: 'act',
      },
    ],
    allocations: [
      { service: 'amateur', band: '2 m', fromHz: 144_000_000, toHz: 145_000_000, source: 'act' },
      {
        service: 'amateur',
        band: '2 m',
        fromHz: 145_000_000,
        toHz: 146_000_000,
        classes: ['upper'],
        source: 'act',
      },
    ],
    emissions: [],
    widths: [],
    powers: [],
    barredStations: [],
    bandPlan: [],
    offsets: [],
    channels: [],
    listenOnly: [],
    areas: [],
    rasters: [],
  };
  const law: Law = { country: erewhon, local: [] };
  const signal = { service: 'amateur', widthHz: 16_000, kind: 'phone' } as const;

  test('its rules are sound and are obeyed', () => {
    expect(countryFlaws(erewhon)).toEqual([]);
    expect(mayTransmit(law, { ...signal, frequencyHz: 144_500_000, licenceClass: 'lower' }).may).toBe(true);
    expect(mayTransmit(law, { ...signal, frequencyHz: 145_500_000, licenceClass: 'lower' })).toMatchObject({
      why: 'class',
    });
    expect(mayTransmit(law, { ...signal, frequencyHz: 144_995_000, licenceClass: 'lower' })).toMatchObject({
      why: 'edge',
    });
    expect(mayTransmit(law, { ...signal, frequencyHz: 144_995_000, licenceClass: 'upper' }).may).toBe(true);
  });

  test.each([
    [
      'an unknown source',
      { allocations: [{ service: 'amateur', band: '2 m', fromHz: 1, toHz: 2, source: 'rumour' }] },
      /rumour/,
    ],
    [
      'a span the wrong way round',
      { allocations: [{ service: 'amateur', band: '2 m', fromHz: 9, toHz: 2, source: 'act' }] },
      /runs from 9 to 2/,
    ],
    [
      'an unknown service',
      { allocations: [{ service: 'ham', band: '2 m', fromHz: 1, toHz: 2, source: 'act' }] },
      /service ham/,
    ],
    [
      'an unknown class',
      {
        allocations: [
          { service: 'amateur', band: '2 m', fromHz: 1, toHz: 2, classes: ['top'], source: 'act' },
        ],
      },
      /class top/,
    ],
    [
      'allocations that overlap for one class',
      {
        allocations: [
          { service: 'amateur', band: '2 m', fromHz: 144_000_000, toHz: 145_000_000, source: 'act' },
          {
            service: 'amateur',
            band: '2 m',
            fromHz: 144_500_000,
            toHz: 146_000_000,
            classes: ['upper'],
            source: 'act',
          },
        ],
      },
      /for upper overlap at 144\.500 MHz/,
    ],
    [
      'two channels of one name',
      {
        channels: [
          { service: 'amateur', name: 'A 1', receiveHz: 5, maxWidthHz: 1, kinds: ['phone'], source: 'act' },
          { service: 'amateur', name: 'a1', receiveHz: 6, maxWidthHz: 1, kinds: ['phone'], source: 'act' },
        ],
      },
      /called a1/,
    ],
    [
      'two channels whose names a plan could not tell apart',
      {
        channels: [
          {
            service: 'amateur',
            name: 'VILLAGE 1',
            receiveHz: 5,
            maxWidthHz: 1,
            kinds: ['phone'],
            source: 'act',
          },
          {
            service: 'amateur',
            name: 'village-1',
            receiveHz: 6,
            maxWidthHz: 1,
            kinds: ['phone'],
            source: 'act',
          },
        ],
      },
      /called village-1/,
    ],
  ] satisfies readonly (readonly [string, Partial<Country>, RegExp])[])(
    'a table with %s is found out',
    (_, change, flaw) => {
      expect(
        countryFlaws({ ...erewhon, ...change })
          .map(({ text }) => text)
          .join('\n'),
      ).toMatch(flaw);
    },
  );
});
