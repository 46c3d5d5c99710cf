import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { antennaSituation } from '../../src/reach/antenna-situation.ts';
import { type LinkBudget, type LinkBudgetInput, linkBudget } from '../../src/reach/link-budget.ts';
import { type Profile, typedProfile } from '../../src/reach/profile.ts';

const mast = (heightM: number) => ({
  antenna: antennaSituation({ carried: 'mast', gainDbi: 2.15, heightM }, 146e6),
  feedLossDb: 0,
});

function ground(lengthKm: number, height: (km: number) => number): Profile {
  const distancesKm = Float64Array.from(
    { length: Math.ceil(lengthKm * 20) + 1 },
    (_, index, all = Math.ceil(lengthKm * 20)) => (index / all) * lengthKm,
  );
  return { distancesKm, heightsM: distancesKm.map(height), basis: 'grid', gaps: [], bridged: [] };
}

function budget(input: Partial<LinkBudgetInput> & { readonly profile: Profile }): LinkBudget {
  const answer = linkBudget({
    frequencyHz: 146e6,
    service: 'fm-voice',
    widthHz: 25_000,
    transmitter: { ...mast(100), powerW: 5 },
    receiver: { ...mast(100), place: 'rural' },
    ...input,
  });
  if (!answer.ok) throw new Error(answer.reason);
  return answer;
}

describe('a link budget', () => {
  it('adds up: power, gains and losses make the signal, the signal less the threshold makes the margin', () => {
    const answer = budget({ profile: ground(10, () => 100) });
    expect(answer.parts.reduce((sum, { db }) => sum + db, 0)).toBeCloseTo(answer.signalDbm, 9);
    expect(answer.marginDb).toBeCloseTo(answer.signalDbm - answer.threshold.thresholdDbm, 9);
  });

  it('is that of free space between masts high over flat ground', () => {
    // ITU-R P.525: 95.735 dB at 146 MHz over 10 km; 5 W is 36.99 dBm; a dipole at each end.
    const answer = budget({ profile: ground(10, () => 100) });
    expect(answer.lossDb).toBeCloseTo(95.735, 2);
    expect(answer.signalDbm).toBeCloseTo(36.99 + 2 * 2.15 - 95.735, 2);
    expect(answer.verdict).toBe('solid');
    expect(answer.clearanceShare).toBeGreaterThan(0.6);
  });

  it('names the ridge that stands in the way, and how high it stands above the line', () => {
    // Masts at 100 m, a ridge of 150 m at 4 of 10 km: 50 m plus a bulge of 4 x 6 / 17 = 1.41 m above the line.
    const answer = budget({ profile: ground(10, (km) => (Math.abs(km - 4) < 0.01 ? 150 : 0)) });
    expect(answer.obstacle?.alongKm).toBeCloseTo(4, 6);
    expect(answer.obstacle?.aboveLineM).toBeCloseTo(51.41, 2);
    expect(answer.clearanceShare).toBeLessThan(0);
    // One knife edge costs at least its J(v); v = 51.41 sqrt(2/lambda (1/4000 + 1/6000)) = 1.0356, J = 14.2 dB.
    expect(answer.diffraction?.bullingtonDb).toBeGreaterThan(14.1);
  });

  it('falls with the wood an end stands in, and with a body in the way', () => {
    const profile = ground(5, () => 100);
    const open = budget({ profile });
    const wooded = budget({ profile, receiver: { ...mast(100), treesM: 120, place: 'rural' } });
    expect(wooded.marginDb).toBeLessThan(open.marginDb - 3);
    expect(wooded.spreadDb).toBeGreaterThan(open.spreadDb);
    const carried = (how: 'hand' | 'belt') => ({
      antenna: antennaSituation({ carried: how, heightM: 1.5 }, 146e6),
      feedLossDb: 0,
      powerW: 5,
    });
    expect(budget({ profile, transmitter: carried('belt') }).marginDb).toBeLessThan(
      budget({ profile, transmitter: carried('hand') }).marginDb - 5,
    );
    expect(budget({ profile, transmitter: carried('belt') }).cautions.join(' ')).toMatch(
      /remembered, not measured/,
    );
  });

  it('declines where ground is unknown, saying which stretch', () => {
    const profile = { ...ground(10, () => 100), gaps: [{ fromKm: 3.2, toKm: 5.1 }] };
    const answer = linkBudget({
      profile,
      frequencyHz: 146e6,
      service: 'fm-voice',
      widthHz: 25_000,
      transmitter: { ...mast(10), powerW: 5 },
      receiver: { ...mast(10), place: 'rural' },
    });
    expect(answer).toEqual({
      ok: false,
      reason: 'No elevation data from 3.2 to 5.1 km of 10.0 km.',
      gap: { fromKm: 3.2, toKm: 5.1 },
    });
  });

  it('says that a typed profile is a sketch, and trusts it less', () => {
    const typed = typedProfile([
      [0, 410],
      [5, 420],
      [10, 402],
    ]);
    if (!typed.ok) throw new Error(typed.reason);
    const answer = budget({ profile: typed.profile });
    expect(answer.cautions.join(' ')).toMatch(/typed from a map at 3 points/);
    expect(answer.spreadDb).toBeGreaterThan(budget({ profile: ground(10, () => 410) }).spreadDb);
  });

  it('calls a few steps a path in the clear', () => {
    const profile: Profile = {
      distancesKm: Float64Array.of(0, 0, 0),
      heightsM: Float64Array.of(5, 5, 5),
      basis: 'grid',
      gaps: [],
      bridged: [],
    };
    const answer = budget({ profile });
    expect(answer.verdict).toBe('solid');
    expect(answer.obstacle).toBeUndefined();
  });

  it('is no worse with more power, and no better farther off in free space', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (km, powerW) => {
          const near = budget({
            profile: ground(km, () => 0),
            transmitter: { ...mast(1000), powerW },
            receiver: { ...mast(1000), place: 'rural' },
          });
          const far = budget({
            profile: ground(km + 1, () => 0),
            transmitter: { ...mast(1000), powerW },
            receiver: { ...mast(1000), place: 'rural' },
          });
          const strong = budget({
            profile: ground(km, () => 0),
            transmitter: { ...mast(1000), powerW: 2 * powerW },
            receiver: { ...mast(1000), place: 'rural' },
          });
          return far.marginDb <= near.marginDb && strong.probability >= near.probability;
        },
      ),
      { numRuns: 30 },
    );
  });
});
