/**
 * Whether a signal gets across: power and gains, less every loss on the way, against what the receiver needs. One direction of one path.
 *
 * Loss is free space (ITU-R P.525) and diffraction over the ground (P.526 §4.5); the latter holds the loss of low antennas over open
 * country, so that no height gain is added. Woodland by P.833, noise by P.372. The result is a prediction with a spread of some 8 to
 * 11 dB: it tells where to try, and replaces no trial.
 */
import type { AntennaSituation } from './antenna-situation.ts';
import { dbmOfWatts } from './decibels.ts';
import { type DiffractionLoss, diffractionLoss } from './diffraction.ts';
import { earthBulgeM, medianEarthRadiusKm } from './earth.ts';
import { freeSpaceLossDb } from './free-space.ts';
import { firstFresnelZoneM } from './fresnel.ts';
import type { NoisePlace } from './noise.ts';
import type { Profile, Stretch } from './profile.ts';
import { type RadioService, type ReceiverThreshold, receiverThreshold } from './receiver-threshold.ts';
import type { Polarization } from './spherical-earth.ts';
import { fadingSpreadDb, modelSpreadDb, typedProfileSpreadDb, woodlandSpreadDb } from './spread.ts';
import { chanceOf, type Verdict, verdictOf } from './verdict.ts';
import { depthUnderTreesM, woodlandLossDb } from './woodland.ts';

/** One end of a path, as far as the path cares. */
export interface LinkEnd {
  readonly antenna: AntennaSituation;
  /** Line and connectors, dB. */
  readonly feedLossDb: number;
  /** Height of the trees it stands among, m; absent or 0 in the open. */
  readonly treesM?: number;
}

export interface LinkBudgetInput {
  readonly profile: Profile;
  readonly frequencyHz: number;
  /** Default vertical, as hand-helds are held. */
  readonly polarization?: Polarization;
  readonly transmitter: LinkEnd & { readonly powerW: number };
  readonly receiver: LinkEnd & { readonly sensitivityDbm?: number; readonly place: NoisePlace };
  readonly service: RadioService;
  readonly widthHz: number;
  /** Effective radius of the earth; the median unless stated. */
  readonly earthRadiusKm?: number;
}

/** The piece of ground that takes most of the first Fresnel zone. */
export interface Obstacle {
  readonly alongKm: number;
  readonly groundM: number;
  /** Above the straight line between the antennas, earth bulge reckoned in; negative below it. */
  readonly aboveLineM: number;
  readonly fresnelZoneM: number;
}

/** A line of the budget, dB; gains positive, losses negative. The first is the transmitter's power in dBm. */
export interface BudgetPart {
  readonly what:
    | 'power'
    | 'transmit line'
    | 'transmit antenna'
    | 'transmit body'
    | 'free space'
    | 'diffraction'
    | 'woodland at the transmitter'
    | 'woodland at the receiver'
    | 'receive antenna'
    | 'receive body'
    | 'receive line';
  readonly db: number;
  readonly fromMemory?: true;
}

export interface LinkBudget {
  readonly ok: true;
  readonly distanceM: number;
  readonly parts: readonly BudgetPart[];
  /** Between the antennas: free space, diffraction and woodland, dB. */
  readonly lossDb: number;
  readonly diffraction: DiffractionLoss | undefined;
  /** At the receiver's socket, dBm. */
  readonly signalDbm: number;
  readonly threshold: ReceiverThreshold;
  readonly marginDb: number;
  /** One standard deviation, dB. */
  readonly spreadDb: number;
  /** Chance that the margin is above zero. */
  readonly probability: number;
  readonly verdict: Verdict;
  /** Least clearance as a share of the first Fresnel zone there: 0.6 is clear, 0 grazes, below 0 is blocked. Absent at a few metres. */
  readonly clearanceShare?: number;
  readonly obstacle?: Obstacle;
  /** Sentences a reader should see beside the result. */
  readonly cautions: readonly string[];
}

export type LinkBudgetAnswer =
  | LinkBudget
  | { readonly ok: false; readonly reason: string; readonly gap: Stretch };

/** Below this distance there is no path to reckon: a few steps apart, taken as ten metres of free space. */
const nearestM = 10;

export function linkBudget(input: LinkBudgetInput): LinkBudgetAnswer {
  const { profile, frequencyHz, transmitter, receiver } = input;
  const { distancesKm } = profile;
  const distanceM = (distancesKm.at(-1) ?? 0) * 1000;
  const [gap] = profile.gaps;
  if (gap) {
    const more = profile.gaps.length > 1 ? ' and elsewhere' : '';
    return {
      ok: false,
      reason: `No elevation data from ${gap.fromKm.toFixed(1)} to ${gap.toKm.toFixed(1)} km of ${(distanceM / 1000).toFixed(1)} km${more}.`,
      gap,
    };
  }
  const isNear = distanceM < nearestM;
  const diffraction = isNear
    ? undefined
    : diffractionLoss({ ...geometryOf(input), polarization: input.polarization ?? 'vertical' });
  const obstacle = isNear ? undefined : limitingObstacle(input);
  const [leavingRad, arrivingRad] = elevationsRad(input);
  const woodAtStartDb = woodlandLossDb(
    frequencyHz,
    depthUnderTreesM(transmitter.treesM ?? 0, transmitter.antenna.heightM, leavingRad),
  );
  const woodAtEndDb = woodlandLossDb(
    frequencyHz,
    depthUnderTreesM(receiver.treesM ?? 0, receiver.antenna.heightM, arrivingRad),
  );
  const freeSpaceDb = freeSpaceLossDb(frequencyHz, Math.max(distanceM, nearestM));
  const diffractionDb = diffraction?.lossDb ?? 0;

  const parts: readonly BudgetPart[] = [
    { what: 'power', db: dbmOfWatts(transmitter.powerW) },
    { what: 'transmit line', db: -transmitter.feedLossDb },
    ...antennaParts('transmit', transmitter.antenna),
    { what: 'free space', db: -freeSpaceDb },
    { what: 'diffraction', db: -diffractionDb },
    { what: 'woodland at the transmitter', db: -woodAtStartDb },
    { what: 'woodland at the receiver', db: -woodAtEndDb },
    ...antennaParts('receive', receiver.antenna),
    { what: 'receive line', db: -receiver.feedLossDb },
  ];
  const signalDbm = parts.reduce((sum, part) => sum + part.db, 0);
  const threshold = receiverThreshold({
    service: input.service,
    frequencyHz,
    widthHz: input.widthHz,
    ...(receiver.sensitivityDbm === undefined ? {} : { sensitivityDbm: receiver.sensitivityDbm }),
    place: receiver.place,
    antennaLossDb: receiver.antenna.inefficiencyDb + receiver.feedLossDb,
  });
  const marginDb = signalDbm - threshold.thresholdDbm;
  const spreadDb = Math.hypot(
    modelSpreadDb,
    fadingSpreadDb(frequencyHz, distanceM),
    threshold.spreadDb,
    transmitter.antenna.spreadDb,
    receiver.antenna.spreadDb,
    woodlandSpreadDb(woodAtStartDb),
    woodlandSpreadDb(woodAtEndDb),
    profile.basis === 'typed' ? typedProfileSpreadDb : 0,
  );
  const probability = chanceOf(marginDb, spreadDb);
  return {
    ok: true,
    distanceM,
    parts,
    lossDb: freeSpaceDb + diffractionDb + woodAtStartDb + woodAtEndDb,
    diffraction,
    signalDbm,
    threshold,
    marginDb,
    spreadDb,
    probability,
    verdict: verdictOf(probability),
    ...(obstacle ? { clearanceShare: -obstacle.aboveLineM / obstacle.fresnelZoneM, obstacle } : {}),
    cautions: cautionsOf(input),
  };
}

function antennaParts(end: 'transmit' | 'receive', antenna: AntennaSituation): readonly BudgetPart[] {
  const memory = antenna.fromMemory ? ({ fromMemory: true } as const) : {};
  const body: readonly BudgetPart[] =
    antenna.bodyLossDb === 0 ? [] : [{ what: `${end} body`, db: -antenna.bodyLossDb, fromMemory: true }];
  return [{ what: `${end} antenna`, db: antenna.gainDbi + antenna.bodyLossDb, ...memory }, ...body];
}

function geometryOf({ profile, frequencyHz, transmitter, receiver, earthRadiusKm }: LinkBudgetInput) {
  return {
    distancesKm: profile.distancesKm,
    heightsM: profile.heightsM,
    startAntennaM: transmitter.antenna.heightM,
    endAntennaM: receiver.antenna.heightM,
    frequencyHz,
    earthRadiusKm: earthRadiusKm ?? medianEarthRadiusKm,
  };
}

function limitingObstacle(input: LinkBudgetInput): Obstacle {
  const {
    distancesKm: x,
    heightsM: h,
    startAntennaM,
    endAntennaM,
    frequencyHz,
    earthRadiusKm,
  } = geometryOf(input);
  const last = x.length - 1;
  const d = x[last] ?? 0;
  const [startM, endM] = [(h[0] ?? 0) + startAntennaM, (h[last] ?? 0) + endAntennaM];
  let worst: Obstacle = { alongKm: 0, groundM: 0, aboveLineM: Number.NEGATIVE_INFINITY, fresnelZoneM: 1 };
  for (let i = 1; i < last; i++) {
    const xi = x[i] ?? 0;
    const groundM = h[i] ?? 0;
    const lineM = startM + ((endM - startM) * xi) / d;
    const aboveLineM = groundM + earthBulgeM(xi, d - xi, earthRadiusKm) - lineM;
    const fresnelZoneM = firstFresnelZoneM(frequencyHz, xi * 1000, (d - xi) * 1000);
    if (aboveLineM / fresnelZoneM > worst.aboveLineM / worst.fresnelZoneM)
      worst = { alongKm: xi, groundM, aboveLineM, fresnelZoneM };
  }
  return worst;
}

/** Angles above level at which the path leaves and arrives: towards the other antenna, or over the horizon before it, radians. */
function elevationsRad(input: LinkBudgetInput): readonly [number, number] {
  const { distancesKm: x, heightsM: h, startAntennaM, endAntennaM, earthRadiusKm } = geometryOf(input);
  const last = x.length - 1;
  const d = x[last] ?? 0;
  const [startM, endM] = [(h[0] ?? 0) + startAntennaM, (h[last] ?? 0) + endAntennaM];
  // Metres per km, the ground falling away by 500 x² / a.
  const seen = (fromM: number, toM: number, km: number) =>
    (toM - fromM - (500 * km * km) / earthRadiusKm) / km;
  let leaving = seen(startM, endM, d);
  let arriving = seen(endM, startM, d);
  for (let i = 1; i < last; i++) {
    const xi = x[i] ?? 0;
    leaving = Math.max(leaving, seen(startM, h[i] ?? 0, xi));
    arriving = Math.max(arriving, seen(endM, h[i] ?? 0, d - xi));
  }
  return d === 0 ? [0, 0] : [Math.atan(leaving / 1000), Math.atan(arriving / 1000)];
}

function cautionsOf({ profile, transmitter, receiver, frequencyHz }: LinkBudgetInput): readonly string[] {
  const cautions: string[] = [];
  if (profile.basis === 'typed') {
    cautions.push(
      `The ground was typed from a map at ${profile.typedPoints ?? 0} points; what lies between them is unknown.`,
    );
  }
  for (const { fromKm, toKm } of profile.bridged) {
    cautions.push(
      `No elevation data from ${fromKm.toFixed(2)} to ${toKm.toFixed(2)} km; a straight line was assumed.`,
    );
  }
  if (transmitter.antenna.fromMemory || receiver.antenna.fromMemory) {
    cautions.push(
      'Figures for an antenna on a person or without a stated gain are remembered, not measured; state your own.',
    );
  }
  if (Math.min(transmitter.antenna.heightM, receiver.antenna.heightM) < 1) {
    cautions.push('An antenna lower than 1 m is below what the method was made for.');
  }
  if (frequencyHz < 30e6)
    cautions.push(
      'Below 30 MHz the method does not hold: waves also travel along the ground and by the sky.',
    );
  return cautions;
}
