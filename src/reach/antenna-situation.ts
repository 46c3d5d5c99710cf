/**
 * What an antenna gives where it really is: on a mast, on a vehicle, on a radio in the hand, at the chest, on the belt.
 *
 * Every figure of this file is from memory of the trade's practice: no published measurement could be read for it. (The paper to compare
 * with is C. Hill and T. Kneisel, "Portable radio antenna performance in the 150, 450, 800, and 900 MHz bands", IEEE Trans. Veh.
 * Technol. 40(4), 1991.) They are shown beside every result and give way to what a plan states.
 */
import { dipoleGainDbi } from './decibels.ts';

export type Carried = 'mast' | 'vehicle' | 'hand' | 'chest' | 'belt';

export interface AntennaStated {
  readonly carried: Carried;
  /** Over an isotropic antenna; for a hand-held, as it works in the hand at the face. */
  readonly gainDbi?: number;
  /** Above ground. */
  readonly heightM?: number;
  /** A quarter-wave wire hung from a hand-held's antenna socket. Taken as absent unless stated. */
  readonly counterpoise?: boolean;
}

export interface AntennaSituation {
  readonly carried: Carried;
  readonly heightM: number;
  /** Gain as it works there, dBi. */
  readonly gainDbi: number;
  /** What the body takes off the gain stated, dB; 0 unless at the chest or on the belt. */
  readonly bodyLossDb: number;
  /** Gain of a counterpoise, dB. */
  readonly counterpoiseDb: number;
  /** How much less than a half-wave dipole it takes out of the air, signal and noise alike, dB. */
  readonly inefficiencyDb: number;
  /** One standard deviation of all this, dB. */
  readonly spreadDb: number;
  /** True where a figure that no plan stated and no source backs went in. */
  readonly fromMemory: boolean;
}

interface Usual {
  readonly heightM: number;
  readonly gainDbi: readonly [number, number];
  readonly bodyLossDb: readonly [number, number];
  readonly spreadDb: number;
}

/** Pairs are at 150 and 450 MHz; between them by the logarithm of the frequency, outside them the nearer one. From memory. */
const usual: Readonly<Record<Carried, Usual>> = {
  mast: { heightM: 6, gainDbi: [dipoleGainDbi, dipoleGainDbi], bodyLossDb: [0, 0], spreadDb: 1 },
  vehicle: { heightM: 1.8, gainDbi: [0, 0], bodyLossDb: [0, 0], spreadDb: 2 },
  hand: { heightM: 1.5, gainDbi: [-8, -4], bodyLossDb: [0, 0], spreadDb: 3 },
  chest: { heightM: 1.3, gainDbi: [-8, -4], bodyLossDb: [5, 4], spreadDb: 4 },
  belt: { heightM: 1, gainDbi: [-8, -4], bodyLossDb: [10, 8], spreadDb: 4 },
};

/** From memory: most where the radio's case is short against the wave. */
const counterpoiseGainDb = [3, 1] as const;

export function antennaSituation(stated: AntennaStated, frequencyHz: number): AntennaSituation {
  const { carried } = stated;
  const row = usual[carried];
  const isOnPerson = carried === 'hand' || carried === 'chest' || carried === 'belt';
  const bodyLossDb = between(row.bodyLossDb, frequencyHz);
  const counterpoiseDb = stated.counterpoise && isOnPerson ? between(counterpoiseGainDb, frequencyHz) : 0;
  const gainDbi = (stated.gainDbi ?? between(row.gainDbi, frequencyHz)) - bodyLossDb + counterpoiseDb;
  return {
    carried,
    heightM: stated.heightM ?? row.heightM,
    gainDbi,
    bodyLossDb,
    counterpoiseDb,
    inefficiencyDb: Math.max(0, dipoleGainDbi - gainDbi),
    spreadDb: row.spreadDb,
    fromMemory: stated.gainDbi === undefined || bodyLossDb !== 0 || counterpoiseDb !== 0,
  };
}

function between([at150, at450]: readonly [number, number], frequencyHz: number): number {
  const share = Math.log(frequencyHz / 150e6) / Math.log(3);
  return at150 + (at450 - at150) * Math.min(Math.max(share, 0), 1);
}
