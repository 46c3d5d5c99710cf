import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import { groundSearch } from '../../src/consequences/ground-search.ts';
import { loadGround } from '../../src/consequences/load-ground.ts';
import { type Ground, pathsOf, radioPath } from '../../src/consequences/paths.ts';
import { trialErrors } from '../../src/consequences/trial-errors.ts';
import { Refusal } from '../../src/findings/refusal.ts';
import { example } from './example.ts';

const read = (path: string) => readFile(new URL(`../../plans/terrain/${path}`, import.meta.url));

const hills = `
terrain: { files: [hickory-gap.tif], woodland: 15 m }
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  ridge: { name: Ridge, at: "36.6542, -84.3367", kind: high-ground }
  hollow: { name: Hollow, at: "36.5817, -84.3600", kind: field }
members:
  ada: { name: Ada, licences: { amateur: { class: general, call: KX4XAA } }, radios: [handheld], at: base }
  ben: { name: Ben, licences: { amateur: { class: technician, call: KX4XBB } }, radios: [handheld], at: base, roams: [hollow, ridge] }
trials:
  - { date: 2026-11-14, from: hollow, to: gap, channel: 1, radio: handheld, heard: weak }
  - { date: 2026-11-15, from: hollow, to: ben, channel: 3, radio: handheld, heard: nothing }
  - { date: 2026-11-16, from: hollow, to: gap, channel: 1, heard: weak }
`;

describe('paths that follow from a plan', () => {
  let ground: Ground;
  let whole: Awaited<ReturnType<typeof example>>;
  beforeAll(async () => {
    whole = await example(hills);
    ground = await loadGround(whole.plan, read);
  });

  test('each member has a path from each place they may be to the repeater, and to those they want to reach directly', () => {
    const found = pathsOf(whole.plan, whole.consequences, ground).map(
      ({ from, to }) => `${from.place} ${to.place}`,
    );
    expect(found.toSorted()).toEqual(
      ['base hill', 'hollow base', 'hollow hill', 'ridge base', 'ridge hill'].toSorted(),
    );
  });

  test('members with the same radio at the same place share a path', () => {
    const shared = pathsOf(whole.plan, whole.consequences, ground).find(
      ({ from, to }) => from.place === 'base' && to.place === 'hill',
    );
    expect(shared?.members).toEqual(['ada', 'ben']);
  });

  test('a trial stands beside its path, and one that names no radio counts for all', () => {
    const path = pathsOf(whole.plan, whole.consequences, ground).find(
      ({ from, to }) => from.place === 'hollow' && to.place === 'hill',
    );
    expect(path?.trials.map(({ date }) => date)).toEqual(['2026-11-14', '2026-11-16']);
  });

  test('distances and bearings agree with Vincenty-class geodesy on WGS 84, and magnetic bearings differ by the declination', () => {
    const path = pathsOf(whole.plan, whole.consequences, ground).find(
      ({ from, to }) => from.place === 'base' && to.place === 'hill',
    );
    // By the spherical formula, which is good to a third of a percent here.
    const [dLat, dLon] = [(36.6258 - 36.6192) * (Math.PI / 180), (-84.2725 + 84.201) * (Math.PI / 180)];
    const east = dLon * Math.cos(36.6225 * (Math.PI / 180)) * 6_371_008.8;
    const metres = Math.hypot(dLat * 6_371_008.8, east);
    expect(path?.prediction.distanceM).toBeGreaterThan(metres * 0.996);
    expect(path?.prediction.distanceM).toBeLessThan(metres * 1.004);
    // World Magnetic Model 2025 at 36.6 N 84.25 W, 2026.9: about 6.0 degrees west.
    const turn = (path?.prediction.magneticBearingDeg ?? 0) - (path?.prediction.bearingDeg ?? 0);
    expect(turn).toBeGreaterThan(5.8);
    expect(turn).toBeLessThan(6.2);
  });

  test('the hill sees the base over the valley, the hollow behind two ridges does not', () => {
    const marginTo = (from: string, to: string) => {
      const path = pathsOf(whole.plan, whole.consequences, ground).find(
        (each) => each.from.place === from && each.to.place === to,
      );
      return path?.prediction.ok ? path.prediction.worse.marginDb : Number.NaN;
    };
    expect(marginTo('base', 'hill')).toBeGreaterThan(20);
    expect(marginTo('hollow', 'base')).toBeLessThan(5);
  });

  test('outside the elevation files nothing is assumed: the path says what it lacks', async () => {
    const { plan, consequences } = await example(hills.replace('"36.5817, -84.3600"', '"36.9, -84.36"'));
    const path = pathsOf(plan, consequences, ground).find(({ from }) => from.place === 'hollow');
    expect(path?.prediction.ok).toBe(false);
    expect(path?.prediction.ok === false && path.prediction.reason).toMatch(/No elevation data/);
  });

  test('a typed profile serves where no file does, in either direction', async () => {
    const text = hills.replace(
      'files: [hickory-gap.tif], woodland: 15 m',
      'profiles: [{ from: hill, to: base, heights: [[0, 950], [3, 520], [6.4, 340]] }]',
    );
    const { plan, consequences } = await example(text);
    const bare = await loadGround(plan, read);
    const path = pathsOf(plan, consequences, bare).find(
      ({ from, to }) => from.place === 'base' && to.place === 'hill',
    );
    expect(path?.prediction.ok).toBe(true);
    expect(path?.profile?.heightsM.at(-1)).toBeGreaterThan(900);
  });

  test('a file that is no elevation file is refused by name', async () => {
    const { plan } = await example(hills.replace('hickory-gap.tif', 'README.md'));
    await expect(loadGround(plan, read)).rejects.toThrow(Refusal);
  });

  test('from the hollow there is ground within reach from which the base is reached, and it is nearer than the ridge top', () => {
    const outcome = groundSearch(whole.plan, whole.consequences, ground, {
      path: {
        from: { kind: 'member', place: 'hollow', radio: 'handheld' },
        to: { kind: 'member', place: 'base', radio: 'handheld' },
        slot: 3,
        members: ['ben'],
      },
      chance: 0.9,
      mostWalkS: 3 * 3600,
      onPaths: false,
      count: 3,
    });
    expect(outcome.ok && outcome.answer.ok && outcome.answer.spots.length).toBeGreaterThan(0);
    if (!outcome.ok || !outcome.answer.ok) return;
    const [spot] = outcome.answer.spots;
    expect(spot?.probability).toBeGreaterThanOrEqual(0.9);
    expect(spot?.walkS).toBeLessThanOrEqual(3 * 3600);
    // What the search promises, the path method confirms: within the spread of a grid cell.
    const there = radioPath(
      {
        ...whole.plan,
        places: new Map([
          ...whole.plan.places,
          [
            'spot',
            {
              id: 'spot',
              name: 'Spot',
              at: spot?.position ?? { latitudeDeg: 0, longitudeDeg: 0 },
              kind: 'high-ground',
            },
          ],
        ]),
      },
      whole.consequences,
      ground,
      {
        from: { kind: 'member', place: 'spot', radio: 'handheld' },
        to: { kind: 'member', place: 'base', radio: 'handheld' },
        slot: 3,
        members: ['ben'],
      },
    );
    expect(there.prediction.ok && there.prediction.worse.marginDb).toBeGreaterThan(
      (spot?.marginDb ?? 99) - 3,
    );
  });

  test('trials are held against predictions by kind of radio, and those that name too little are counted', () => {
    const errors = trialErrors(whole.plan, whole.consequences, ground);
    expect(errors.beside.map(({ index }) => index)).toEqual([0, 1]);
    expect(errors.withoutPrediction).toEqual([2]);
    expect(errors.radios.map(({ radio, fit }) => [radio, fit.trials])).toEqual([['handheld', 2]]);
  });
});
