import { describe, expect, it } from 'vitest';
import { antennaRise } from '../../src/reach/antenna-rise.ts';
import { antennaSituation } from '../../src/reach/antenna-situation.ts';
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import { type LinkBudgetInput, linkBudget } from '../../src/reach/link-budget.ts';
import { mosaic } from '../../src/reach/mosaic.ts';
import { nearestGround } from '../../src/reach/nearest-ground.ts';
import type { Position } from '../../src/reach/position.ts';
import { profileOverTerrain } from '../../src/reach/profile.ts';
import { readHills } from './terrain.fixture.ts';

const geodesy = await loadGeodesy();
const hills = await readHills();
const terrain = mosaic([hills]);
const repeater = { position: { latitudeDeg: 36.6042, longitudeDeg: -84.2083 }, antennaM: 12 };
const hollow = { latitudeDeg: 36.67333, longitudeDeg: -84.12417 };

const inputFrom = (place: Position): LinkBudgetInput => ({
  profile: profileOverTerrain(terrain, geodesy, place, repeater.position),
  frequencyHz: 146e6,
  service: 'fm-voice',
  widthHz: 25_000,
  transmitter: {
    antenna: antennaSituation({ carried: 'hand', gainDbi: -4, heightM: 1.5 }, 146e6),
    feedLossDb: 0,
    powerW: 5,
  },
  receiver: {
    antenna: antennaSituation({ carried: 'mast', gainDbi: 5, heightM: repeater.antennaM }, 146e6),
    feedLossDb: 1,
    place: 'rural',
  },
});

function budgetFrom(place: Position) {
  const budget = linkBudget(inputFrom(place));
  if (!budget.ok) throw new Error(budget.reason);
  return budget;
}

const start = budgetFrom(hollow);
const search = {
  grid: hills,
  from: hollow,
  station: repeater,
  cellAntennaM: 1.5,
  frequencyHz: 146e6,
  greatestLossDb: start.marginDb + start.lossDb,
  spreadDb: start.spreadDb,
  wanted: 0.95,
  mostWalkS: 3600,
};

describe('the nearest ground from which a path closes', () => {
  it('is looked for where the path fails', () => {
    expect(start.probability).toBeLessThan(0.5);
  });

  it('lists spots that will do, quickest first, as the per-profile method confirms', () => {
    const answer = nearestGround(search);
    if (!answer.ok) throw new Error(answer.reason);
    expect(answer.spots.length).toBeGreaterThan(1);
    expect(answer.here.walkS).toBe(0);
    let before = 0;
    for (const spot of answer.spots) {
      expect(spot.probability).toBeGreaterThanOrEqual(0.95);
      expect(spot.walkS).toBeGreaterThanOrEqual(before);
      expect(spot.walkS).toBeLessThanOrEqual(search.mostWalkS);
      before = spot.walkS;
      // The profile is sampled elsewhere than the raster, hence a few decibels.
      expect(Math.abs(budgetFrom(spot.position).marginDb - spot.marginDb)).toBeLessThan(4);
      expect(spot.groundM).toBe(terrain.heightM(spot.position));
      const crowM = geodesy.line(hollow, spot.position).distanceM;
      expect(spot.walkM).toBeGreaterThan(crowM - 100);
      expect(geodesy.line(hollow, spot.way[0] ?? spot.position).distanceM).toBeLessThan(70);
      expect(spot.way.at(-1)).toEqual(spot.position);
    }
    for (const [index, spot] of answer.spots.entries()) {
      for (const other of answer.spots.slice(index + 1))
        expect(geodesy.line(spot.position, other.position).distanceM).toBeGreaterThan(290);
    }
  });

  it('is the place itself where the path closes already', () => {
    const answer = nearestGround({ ...search, greatestLossDb: search.greatestLossDb + 60 });
    expect(answer.ok && answer.spots[0]?.walkS).toBe(0);
  });

  it('names the best to be had when nothing will do', () => {
    const answer = nearestGround({ ...search, greatestLossDb: search.greatestLossDb - 60, mostWalkS: 1800 });
    if (!answer.ok) throw new Error(answer.reason);
    expect(answer.spots).toEqual([]);
    expect(answer.best.marginDb).toBeGreaterThan(answer.here.marginDb);
  });

  it('says so when a place is off the map', () => {
    expect(nearestGround({ ...search, from: { latitudeDeg: 10, longitudeDeg: 10 } })).toMatchObject({
      ok: false,
    });
    expect(
      nearestGround({ ...search, station: { ...repeater, position: { latitudeDeg: 10, longitudeDeg: 10 } } }),
    ).toMatchObject({ ok: false });
  });
});

describe('how much higher an antenna must be', () => {
  it('is the lowest of the heights at which the path closes', () => {
    const ends = { ...inputFrom({ latitudeDeg: 36.56583, longitudeDeg: -84.20667 }) };
    const now = linkBudget(ends);
    const wanted = Math.min(0.99, (now.ok ? now.probability : 0) + 0.05);
    const rise = antennaRise(ends, 'transmitter', wanted, 40);
    expect(rise?.heightM).toBeGreaterThan(1.5);
    expect(rise?.budget.probability).toBeGreaterThanOrEqual(wanted);
    expect(antennaRise(ends, 'transmitter', 1.01, 10)).toBeUndefined();
  });
});
