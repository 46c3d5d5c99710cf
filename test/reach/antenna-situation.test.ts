import { describe, expect, it } from 'vitest';
import { antennaSituation } from '../../src/reach/antenna-situation.ts';

describe('antennas where they really are', () => {
  it('give on a mast what was stated', () => {
    const mast = antennaSituation({ carried: 'mast', gainDbi: 5.15, heightM: 12 }, 146e6);
    expect(mast).toMatchObject({
      gainDbi: 5.15,
      heightM: 12,
      bodyLossDb: 0,
      inefficiencyDb: 0,
      fromMemory: false,
    });
  });

  it('are taken at the figure stated for a radio in the hand, and lose more at the chest and most on the belt', () => {
    const [hand, chest, belt] = (['hand', 'chest', 'belt'] as const).map((carried) =>
      antennaSituation({ carried, gainDbi: -2.85 }, 146e6),
    );
    expect(hand).toMatchObject({ gainDbi: -2.85, bodyLossDb: 0, fromMemory: false });
    expect(chest?.gainDbi).toBeLessThan(hand?.gainDbi ?? 0);
    // From memory: a radio on the hip is 8 to 12 dB down at VHF, 6 to 10 dB at UHF.
    expect(belt?.bodyLossDb).toBeCloseTo(10, 6);
    expect(antennaSituation({ carried: 'belt', gainDbi: -2.85 }, 446e6).bodyLossDb).toBeCloseTo(8, 1);
    expect(belt?.fromMemory).toBe(true);
  });

  it('are remembered, and said to be, where no gain is stated', () => {
    // From memory: a short helical at the face has -6 to -10 dBi at 150 MHz, -3 to -5 dBi at 450 MHz.
    const helical = antennaSituation({ carried: 'hand' }, 146e6);
    expect(helical.fromMemory).toBe(true);
    expect(helical.gainDbi).toBeLessThanOrEqual(-6);
    expect(helical.gainDbi).toBeGreaterThanOrEqual(-10);
    expect(antennaSituation({ carried: 'hand' }, 446e6).gainDbi).toBeCloseTo(-4, 1);
  });

  it('gain from a counterpoise on a person, and nothing from one on a mast', () => {
    const bare = antennaSituation({ carried: 'hand' }, 146e6);
    expect(
      antennaSituation({ carried: 'hand', counterpoise: true }, 146e6).gainDbi - bare.gainDbi,
    ).toBeCloseTo(3, 6);
    expect(antennaSituation({ carried: 'mast', counterpoise: true }, 146e6).counterpoiseDb).toBe(0);
  });
});
