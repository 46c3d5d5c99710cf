/**
 * How far people must stay from a transmitting antenna, and what the field is at a distance.
 *
 * Source: FCC OET Bulletin 65 (edition 97-01), far-field equations: `S = k P G / (4 pi R²)`, P the average power at the antenna in
 * W, G the numeric gain over isotropic in the main beam, k = 1 without reflection, 2.56 for a reflecting ground as usually met, 4 for a
 * perfect one (the last from memory). Duty factors: Supplement B, table 2.
 *
 * An estimate on the cautious side of the main beam, not a measurement; it does not replace the evaluation that the rules ask of a licensee. For a
 * radio worn or held at the body there is no distance to keep: the limit is of absorption (SAR), and the maker's certification governs.
 */
import type { Carried } from './antenna-situation.ts';
import { ratioOfDb } from './decibels.ts';
import {
  type ExposureGroup,
  type ExposureLimit,
  type ExposureRules,
  exposureLimit,
} from './exposure-limit.ts';
import { wavelengthM } from './free-space.ts';

/** By how much reflection from the ground raises power density. */
const reflectionFactors = { none: 1, usual: 2.56, perfect: 4 } as const;

type Reflection = keyof typeof reflectionFactors;

/** Average over peak power while the key is down, by what is sent; Supplement B of Bulletin 65, table 2. */
export const dutyFactors = {
  'fm voice': 1,
  data: 1,
  carrier: 1,
  'ssb voice': 0.2,
  'ssb voice with heavy processing': 0.5,
  cw: 0.4,
} as const;

/** Nearer than this to the body the power density tables do not hold, m (47 CFR 2.1091 and 2.1093). */
const portableM = 0.2;

export interface Transmitter {
  readonly carried: Carried;
  readonly powerW: number;
  /** In the main beam, dBi. */
  readonly gainDbi: number;
  readonly feedLossDb: number;
  readonly frequencyHz: number;
  /** Average over peak power while sending; see {@link dutyFactors}. Default 1. */
  readonly dutyFactor?: number;
  /** Share of the averaging time on the air, 0 … 1. Default 1, the cautious choice for a repeater. */
  readonly transmitShare?: number;
  /** Default `usual`. */
  readonly reflection?: Reflection;
}

export interface KeepAway {
  readonly group: ExposureGroup;
  readonly limit: ExposureLimit;
  /** Where the formula meets the limit, m. */
  readonly formulaM: number;
  /** What to keep, m: the formula's distance, though no less than the edge of the near field (where the formula fails) or 20 cm. */
  readonly keepM: number;
}

export type ExposureAnswer =
  | {
      readonly kind: 'distance';
      readonly averagePowerW: number;
      /** Wavelength over 2 pi: nearer, the far-field formula does not hold, m. */
      readonly nearFieldM: number;
      readonly public: KeepAway;
      readonly occupational: KeepAway;
      readonly caution: string;
    }
  | {
      /** At the body: no distance; the limit is of absorption. */
      readonly kind: 'at the body';
      readonly caution: string;
    }
  | { readonly kind: 'no limit'; readonly reason: string };

/** What governs a radio that is used at the body. */
export const atTheBody =
  'Used at the body: no distance applies. The limit is of absorbed power (SAR); follow the manual of the certified radio, with the antenna and holder it was certified with.';

/** What a distance is worth. */
export const estimate =
  'An estimate for the main beam in the far field, with ground reflection; it does not replace the evaluation that the rules ask for. Keep people, and above all faces, farther away where you can.';

/** @remarks `{frequency}` stands for the frequency in MHz. */
export const noLimit = 'The table has no limit at {frequency} MHz.';

/** The distance to keep from a transmitter, for the public and for people who control their exposure. */
export function exposure(transmitter: Transmitter, rules: ExposureRules): ExposureAnswer {
  const { carried, frequencyHz } = transmitter;
  if (carried === 'hand' || carried === 'chest' || carried === 'belt')
    return { kind: 'at the body', caution: atTheBody };
  const forPublic = keepAway(transmitter, rules, 'public');
  const forOccupational = keepAway(transmitter, rules, 'occupational');
  if (!forPublic || !forOccupational) {
    return { kind: 'no limit', reason: noLimit.replace('{frequency}', String(frequencyHz / 1e6)) };
  }
  return {
    kind: 'distance',
    averagePowerW: averagePowerW(transmitter),
    nearFieldM: nearFieldM(frequencyHz),
    public: forPublic,
    occupational: forOccupational,
    caution: estimate,
  };
}

/** Average power into the line, W: peak power, duty of the mode, share of the time on the air. */
export function averagePowerW({
  powerW,
  dutyFactor = 1,
  transmitShare = 1,
}: Pick<Transmitter, 'powerW' | 'dutyFactor' | 'transmitShare'>): number {
  return powerW * dutyFactor * transmitShare;
}

/** Power density in the main beam at a distance, W/m². */
export function powerDensityWm2(transmitter: Transmitter, distanceM: number): number {
  return radiatedTimesReflection(transmitter) / (4 * Math.PI * distanceM ** 2);
}

/** Wavelength over 2 pi, m: 47.7 over the frequency in MHz. */
export function nearFieldM(frequencyHz: number): number {
  return wavelengthM(frequencyHz) / (2 * Math.PI);
}

function keepAway(
  transmitter: Transmitter,
  rules: ExposureRules,
  group: ExposureGroup,
): KeepAway | undefined {
  const limit = exposureLimit(rules, group, transmitter.frequencyHz);
  if (!limit) return undefined;
  const formulaM = Math.sqrt(radiatedTimesReflection(transmitter) / (4 * Math.PI * limit.densityWm2));
  return {
    group,
    limit,
    formulaM,
    keepM: Math.max(formulaM, nearFieldM(transmitter.frequencyHz), portableM),
  };
}

function radiatedTimesReflection(transmitter: Transmitter): number {
  const factor = reflectionFactors[transmitter.reflection ?? 'usual'];
  return factor * averagePowerW(transmitter) * ratioOfDb(transmitter.gainDbi - transmitter.feedLossDb);
}
