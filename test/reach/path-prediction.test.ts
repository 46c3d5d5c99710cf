import { describe, expect, it } from 'vitest';
import { antennaSituation } from '../../src/reach/antenna-situation.ts';
import { loadGeodesy } from '../../src/reach/geodesy.ts';
import { mosaic } from '../../src/reach/mosaic.ts';
import { type PathPredictionInput, type PathStation, predictPath } from '../../src/reach/path-prediction.ts';
import { profileOverTerrain } from '../../src/reach/profile.ts';
import { readHills } from './terrain.fixture.ts';

const geodesy = await loadGeodesy();
const terrain = mosaic([await readHills()]);

const handheld: PathStation = {
  position: { latitudeDeg: 36.66, longitudeDeg: -84.25 },
  antenna: antennaSituation({ carried: 'hand', gainDbi: -2.85, heightM: 1.5 }, 146e6),
  feedLossDb: 0,
  powerW: 5,
  place: 'rural',
};
const repeater: PathStation = {
  position: { latitudeDeg: 36.6042, longitudeDeg: -84.2083 },
  antenna: antennaSituation({ carried: 'mast', gainDbi: 5.15, heightM: 12 }, 146e6),
  feedLossDb: 1,
  powerW: 25,
  place: 'rural',
};

function predict(over: Partial<PathPredictionInput> = {}) {
  const from = over.from ?? handheld;
  const to = over.to ?? repeater;
  return predictPath({
    from,
    to,
    geodesy,
    profile: profileOverTerrain(terrain, geodesy, from.position, to.position),
    frequencyHz: 146.34e6,
    returnFrequencyHz: 146.94e6,
    service: 'fm-voice',
    widthHz: 25_000,
    ...over,
  });
}

describe('a path both ways', () => {
  it('hangs on the weaker transmitter', () => {
    const answer = predict();
    if (!answer.ok) throw new Error(answer.reason);
    expect(answer.there?.marginDb).toBeLessThan(answer.back?.marginDb ?? 0);
    expect(answer.worse).toBe(answer.there);
    // Same ground, half a percent in frequency: the two losses differ by a tenth of a decibel.
    expect(answer.there?.lossDb).toBeCloseTo(answer.back?.lossDb ?? 0, 0);
  });

  it('puts its obstacle on the ground between the stations, whichever way is worse', () => {
    for (const input of [
      {},
      { from: repeater, to: handheld, frequencyHz: 146.94e6, returnFrequencyHz: 146.34e6 },
    ]) {
      const answer = predict(input);
      if (!answer.ok || !answer.obstacle) throw new Error('no obstacle');
      const start = ('from' in input && input.from) || handheld;
      expect(geodesy.line(start.position, answer.obstacle.position).distanceM / 1000).toBeCloseTo(
        answer.obstacle.alongKm,
        3,
      );
      expect(terrain.heightM(answer.obstacle.position)).toBeCloseTo(answer.obstacle.groundM, 0);
    }
  });

  it('gives bearings from each end, true and by the compass', () => {
    const answer = predict({ declinationDeg: { from: -6, to: -6 } });
    expect(answer.bearingDeg).toBeGreaterThan(140);
    expect(answer.bearingDeg).toBeLessThan(160);
    // Meridians converge by sin(latitude) times the difference in longitude: 0.025 degrees here.
    expect(answer.returnBearingDeg - answer.bearingDeg - 180).toBeCloseTo(
      0.0417 * Math.sin((36.63 * Math.PI) / 180),
      3,
    );
    expect(answer.magneticBearingDeg).toBeCloseTo(answer.bearingDeg + 6, 9);
  });

  it('has one way only where a station only listens', () => {
    const { powerW: _, ...listener } = repeater;
    const answer = predict({ to: listener });
    if (!answer.ok) throw new Error(answer.reason);
    expect(answer.back).toBeUndefined();
    expect(answer.worse).toBe(answer.there);
  });

  it('still says how far and where to when the ground is unknown', () => {
    const answer = predict({ to: { ...repeater, position: { latitudeDeg: 37.2, longitudeDeg: -84.2 } } });
    expect(answer).toMatchObject({ ok: false, reason: expect.stringContaining('No elevation data') });
    expect(answer.distanceM).toBeGreaterThan(59_000);
  });
});
