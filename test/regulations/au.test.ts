import { expect, test } from 'vitest';
import { australia } from '../../src/regulations/au.ts';
import { bandPlanAt } from '../../src/regulations/band-plan.ts';
import { channelByName } from '../../src/regulations/channels.ts';
import type { Country } from '../../src/regulations/country.ts';
import type { Law } from '../../src/regulations/law.ts';
import { mayTransmit, type Transmission } from '../../src/regulations/may-transmit.ts';
import { mhz } from '../../src/regulations/mhz.ts';
import { newZealand } from '../../src/regulations/nz.ts';
import { powerLimit } from '../../src/regulations/power-limit.ts';
import { usualOffset } from '../../src/regulations/usual-offset.ts';
import { uhfCbTable } from '../sources/regulations/au-uhf-cb.ts';
import { cbTable } from '../sources/regulations/cb-channels.ts';

const law: Law = { country: australia, local: [] };

function channel(n: number) {
  const search = channelByName(law, `UHF CB ${n}`);
  if (!search.found) throw new Error(`no channel ${n}`);
  return search.channel;
}
const sends = (n: number, extra: Partial<Transmission> = {}) =>
  mayTransmit(law, {
    service: 'uhf-cb',
    frequencyHz: channel(n).receiveHz,
    widthHz: 11_000,
    kind: 'phone',
    ...extra,
  });

test('the 80 channels as listed', () => {
  for (const [n, at] of uhfCbTable) expect(channel(n).receiveHz, `${n}`).toBe(mhz(at));
  expect([1, 40, 41, 80].map((n) => channel(n).receiveHz)).toEqual(
    ['476.4250', '477.4000', '476.4375', '477.4125'].map(mhz),
  );
});

test('the roles as listed', () => {
  for (const [n, , role] of uhfCbTable) {
    const row = channel(n);
    expect(row.repeaterInputHz !== undefined, `${n} output`).toBe(role.includes('repeater output'));
    if (role.startsWith('emergency'))
      expect(row, `${n}`).toMatchObject({ role: 'emergencies only', roleOnly: true });
    else if (role.startsWith('repeater input')) expect(row.role, `${n}`).toMatch(/repeater input/);
    else if (role.startsWith('customary')) expect(row.role, `${n}`).toMatch(/customary/);
    else if (role === 'general' || role === 'repeater output') expect(row.role, `${n}`).toBeUndefined();
  }
});

test('a repeater’s input lies 30 channels and 0.75 MHz above its output', () => {
  const outputs = australia.channels.filter((row) => row.repeaterInputHz !== undefined);
  expect(outputs).toHaveLength(16);
  for (const row of outputs) {
    expect((row.repeaterInputHz ?? 0) - row.receiveHz).toBe(750_000);
    expect(usualOffset(law, row.receiveHz)).toMatchObject({ usualHz: [750_000], fixed: true });
  }
  expect(channel(1).repeaterInputHz).toBe(channel(31).receiveHz);
  expect([channel(48).repeaterInputHz, channel(78).receiveHz]).toEqual([mhz('477.3625'), mhz('477.3625')]);
});

test('no speech on 22 and 23, nothing at all on 61 to 63', () => {
  expect([22, 23].map((n) => sends(n))).toEqual([
    expect.objectContaining({ why: 'kind' }),
    expect.objectContaining({ why: 'kind' }),
  ]);
  expect(sends(22, { kind: 'data' }).may).toBe(true);
  for (const n of [61, 62, 63]) expect(sends(n)).toMatchObject({ may: false, why: 'outside' });
  expect(sends(9).may).toBe(true);
});

test('27 MHz has the 40 channels, the ninth for emergencies', () => {
  for (const [n, at] of cbTable) {
    const search = channelByName(law, `CB ${n}`);
    expect(search.found && search.channel.receiveHz).toBe(mhz(at));
  }
  const ninth = channelByName(law, 'CB 9');
  expect(ninth.found && ninth.channel.roleOnly).toBe(true);
});

// 4 W of carrier and 12 W peak, as 47 CFR 95.967 and the CEPT citizens’ band have it; here from memory.
test('27 MHz has 4 W of AM and 12 W of single sideband in both countries', () => {
  for (const [country, at] of [
    [australia, '27.185'],
    [newZealand, '27.185'],
    [newZealand, '26.450'],
  ] as const) {
    const asked = { service: 'cb', frequencyHz: mhz(at), station: 'mobile', kind: 'phone' } as const;
    const limit = (modulation: 'am' | 'ssb') => powerLimit({ country, local: [] }, { ...asked, modulation });
    expect(limit('am')).toMatchObject({ maxW: 4, fromMemory: true });
    expect(limit('ssb')).toMatchObject({ maxW: 12, fromMemory: true });
  }
});

// From memory, like the rows: edges of the bands by the two administrations.
test.each([
  ['au', '1.8', '1.875'],
  ['au', '3.776', '3.8'],
  ['au', '10.1', '10.15'],
  ['au', '18.068', '18.168'],
  ['au', '24.89', '24.99'],
  ['nz', '1.8', '1.95'],
  ['nz', '10.1', '10.15'],
  ['nz', '18.068', '18.168'],
  ['nz', '24.89', '24.99'],
  ['nz', '1240', '1300'],
])('the amateurs of %s have %s-%s MHz', (code, from, to) => {
  const country = code === 'au' ? australia : newZealand;
  const row = country.allocations.find(({ fromHz }) => fromHz === mhz(from));
  expect(row).toMatchObject({ service: 'amateur', toHz: mhz(to), fromMemory: true });
});

// ITU Radio Regulations No. 25.9: the call sign at short intervals; how short is from memory.
test('amateurs give their call sign every 10 minutes in Australia, every 15 in New Zealand', () => {
  const amateur = ({ services }: Country) => services.find(({ id }) => id === 'amateur')?.identification;
  expect(amateur(australia)).toMatchObject({ everyMin: 10, atStart: true, fromMemory: true });
  expect(amateur(newZealand)).toMatchObject({ everyMin: 15, fromMemory: true });
});

// Region 3, from memory; 18.160 MHz is worldwide.
test('the HF emergency centres lie in bands that both countries have', () => {
  for (const country of [australia, newZealand])
    for (const at of ['3.600', '7.110', '14.300', '18.160', '21.360']) {
      expect(bandPlanAt({ country, local: [] }, mhz(at))[0]?.use, at).toBe('emergency');
      expect(
        country.allocations.some(({ fromHz, toHz }) => fromHz <= mhz(at) && mhz(at) <= toHz),
        at,
      ).toBe(true);
    }
});

// From memory: minus up to and with 147.000, plus above.
test('an amateur output on 147.000 has its input below, one on 147.150 above', () => {
  expect(['147.000', '147.150'].map((at) => usualOffset(law, mhz(at))?.usualHz)).toEqual([
    [-600_000],
    [600_000],
  ]);
});

// AS/NZS 4365, from memory; the emergency rule of 5 and 35 is Australian.
test('New Zealand shares the raster and not the emergency rule', () => {
  const prs = newZealand.channels.filter(({ service }) => service === 'prs');
  expect(prs.map(({ receiveHz }) => receiveHz)).toEqual(uhfCbTable.map(([, at]) => mhz(at)));
  expect(prs[4]?.roleOnly).toBeUndefined();
});

// Bands of 26.325-26.775 and 26.960-27.410 MHz: radio standards bulletin, issue 31, 2011. Channels from memory.
test('New Zealand has the 40 channels of 27 MHz and 40 of its own, all inside the two bands', () => {
  const law = { country: newZealand, local: [] };
  const bands = newZealand.allocations.filter(({ service }) => service === 'cb');
  const rows = newZealand.channels.filter(({ service }) => service === 'cb');
  expect(rows).toHaveLength(80);
  for (const { receiveHz } of rows)
    expect(bands.some(({ fromHz, toHz }) => fromHz <= receiveHz && receiveHz <= toHz)).toBe(true);
  expect(channelByName(law, 'cb27 19')).toMatchObject({ found: true, channel: { receiveHz: 27_185_000 } });
  expect(channelByName(law, 'CB26 1')).toMatchObject({ found: true, channel: { receiveHz: 26_330_000 } });
  // Which of the two bands is meant nobody can tell, so neither is taken.
  expect(channelByName(law, 'CB 11')).toMatchObject({
    found: false,
    nearest: ['CB26 11', 'CB27 11', 'CB26 10'],
  });
});
