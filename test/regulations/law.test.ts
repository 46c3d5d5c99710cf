import { describe, expect, test } from 'vitest';
import { bandPlanAt, bandPlanOverlapping } from '../../src/regulations/band-plan.ts';
import { barredStation } from '../../src/regulations/barred-station.ts';
import { channelByName, channelsAtFrequency } from '../../src/regulations/channels.ts';
import { type Law, type LocalRules, sourceOf } from '../../src/regulations/law.ts';
import { mayTransmit } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { unitedStates } from '../../src/regulations/us.ts';
import { usualOffset } from '../../src/regulations/usual-offset.ts';

const none: LocalRules = {
  name: 'Coordinator',
  sources: { plan: { document: 'Invented coordinator’s plan' } },
  bandPlan: [],
  offsets: [],
  rasters: [],
  barredStations: [],
  powers: [],
  closed: [],
};
const span = { fromHz: mhz('441'), toHz: mhz('442'), source: 'plan' };
const law = (local: Partial<LocalRules> = {}): Law => ({
  country: unitedStates,
  local: [{ ...none, ...local }],
});
const phone = {
  service: 'amateur',
  licenceClass: 'extra',
  widthHz: 11_000,
  kind: 'phone',
  frequencyHz: mhz('441.5'),
} as const;

describe('what a local coordinator adds', () => {
  test('a closed segment is refused with the coordinator’s reason and source', () => {
    const rules = law({ closed: [{ ...span, service: 'amateur', label: 'kept for the hospital link' }] });
    const answer = mayTransmit(rules, phone);
    expect(answer).toMatchObject({ may: false, why: 'closed', text: expect.stringMatching(/hospital link/) });
    expect(!answer.may && answer.row && sourceOf(rules, answer.row).document).toBe(
      'Invented coordinator’s plan',
    );
  });

  test('a lower power holds, a higher one does not lift the country’s', () => {
    const asked = { ...phone, station: 'base' } as const;
    const limit = (maxW: number) =>
      powerLimit(law({ powers: [{ ...span, service: 'amateur', maxW, measure: 'output' }] }), asked)?.maxW;
    expect([limit(25), limit(5000)]).toEqual([25, 1500]);
  });

  test('a station is barred where the country would have it', () => {
    const rules = law({ barredStations: [{ ...span, service: 'amateur', stations: ['repeater'] }] });
    expect(barredStation(rules, 'repeater', mhz('441.495'), mhz('441.505'))?.source).toBe('plan');
    expect(mayTransmit(rules, { ...phone, station: 'repeater' })).toMatchObject({ why: 'station' });
  });

  test('a coordinator’s offset stands before the country’s, but not before one that the law fixes', () => {
    const five = { band: '70 cm', usualHz: [mhz('5')], alsoHz: [], source: 'plan' };
    const rules = law({
      offsets: [
        { ...five, service: 'amateur', fromHz: mhz('440'), toHz: mhz('445') },
        { ...five, service: 'gmrs', fromHz: mhz('462'), toHz: mhz('463'), usualHz: [mhz('1')] },
      ],
    });
    expect(usualOffset(rules, mhz('444'))?.usualHz).toEqual([mhz('5')]);
    expect(usualOffset(rules, mhz('462.675'))).toMatchObject({ usualHz: [mhz('5')], fixed: true });
  });

  test('what the law forbids stays forbidden whatever is added', () => {
    const everywhere = { fromHz: 1, toHz: 3_000_000_000, source: 'plan' };
    const rules = law({
      bandPlan: [{ ...everywhere, band: 'all', use: 'simplex', label: 'free for all' }],
      offsets: [{ ...everywhere, service: 'amateur', band: 'all', usualHz: [0], alsoHz: [] }],
      powers: [{ ...everywhere, service: 'amateur', maxW: 1e6, measure: 'output' }],
    });
    expect(
      mayTransmit(rules, { ...phone, licenceClass: 'technician', frequencyHz: mhz('14.250') }),
    ).toMatchObject({ why: 'class' });
    expect(mayTransmit(rules, { ...phone, frequencyHz: mhz('150') })).toMatchObject({ why: 'outside' });
  });

  test('of band plan rows the narrowest comes first, and a local one before a country’s as narrow', () => {
    const own = {
      band: '2 m',
      fromHz: mhz('146.40'),
      toHz: mhz('146.58'),
      use: 'simplex',
      label: 'valley nets',
      source: 'plan',
    } as const;
    expect(bandPlanAt(law({ bandPlan: [own] }), mhz('146.520')).map(({ label }) => label)).toEqual([
      'national FM simplex calling',
      'valley nets',
      'FM simplex',
    ]);
  });
});

describe('the band plan over a stretch', () => {
  test('a signal beside a calling frequency takes it in', () => {
    const uses = (at: string) =>
      bandPlanOverlapping(law(), mhz(at) - 8_000, mhz(at) + 8_000).map(({ use }) => use);
    expect(uses('146.515')).toContain('calling');
    expect(uses('146.505')).not.toContain('calling');
  });

  test('a segment that only touches the stretch does not count', () => {
    const labels = bandPlanOverlapping(law(), mhz('145.50'), mhz('145.80')).map(({ label }) => label);
    expect(labels).not.toContain('satellites only');
    expect(labels).not.toContain('FM repeater outputs');
  });
});

describe('channels by name', () => {
  test.each(['GMRS 20', 'gmrs20', 'GMRS-20', 'Gmrs 020'])('%s is GMRS 20', (name) => {
    const search = channelByName(law(), name);
    expect(search.found && search.channel.name).toBe('GMRS 20');
  });

  test.each([
    ['GMSR 20', 'GMRS 20'],
    ['GMRS 31', 'GMRS 30'],
    ['FRS 23', 'FRS 22'],
    ['WX 8', 'WX7'],
    ['MUR 3', 'MURS 3'],
  ])('%s is most likely meant as %s', (written, meant) => {
    const search = channelByName(law(), written);
    expect(search.found).toBe(false);
    expect(!search.found && search.nearest[0]).toBe(meant);
  });

  test('a name of great length is looked up quickly', () => {
    expect(channelByName(law(), 'G'.repeat(1_000_000)).found).toBe(false);
  });

  test('462.5625 is GMRS 1 and FRS 1', () => {
    expect(channelsAtFrequency(law(), mhz('462.5625')).map(({ name }) => name)).toEqual(['GMRS 1', 'FRS 1']);
  });
});

test('a refusal gives the figures', () => {
  const text = (extra: object) => {
    const answer = mayTransmit(law(), { ...phone, ...extra });
    return answer.may ? 'may' : answer.text;
  };
  expect(text({ frequencyHz: mhz('14.348'), widthHz: 3_000, sideband: 'upper' })).toBe(
    'the signal fills 14.348-14.351 MHz and spills out of 14.000-14.350 MHz',
  );
  expect(text({ licenceClass: 'technician', frequencyHz: mhz('14.250') })).toBe(
    '14.250 MHz is not open to class Technician, only to General, Advanced, Amateur Extra',
  );
  expect(text({ service: 'gmrs', frequencyHz: mhz('462.680') })).toBe(
    '462.680 MHz is no channel of the General Mobile Radio Service; the nearest is GMRS 20, 462.675 MHz',
  );
});
