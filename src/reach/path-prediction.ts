/**
 * A path between two stations, both ways: distance, bearings, the link budget of each direction, the worse of the two, and where on the
 * ground the limiting obstacle stands.
 */
import type { AntennaSituation } from './antenna-situation.ts';
import { compass, type Geodesy } from './geodesy.ts';
import { type LinkBudget, linkBudget, type Obstacle } from './link-budget.ts';
import type { NoisePlace } from './noise.ts';
import type { Position } from './position.ts';
import type { Profile, Stretch } from './profile.ts';
import type { RadioService } from './receiver-threshold.ts';
import type { Polarization } from './spherical-earth.ts';

export interface PathStation {
  readonly position: Position;
  readonly antenna: AntennaSituation;
  readonly feedLossDb: number;
  /** Absent: it only listens, and is sent to but not heard from. */
  readonly powerW?: number;
  readonly sensitivityDbm?: number;
  readonly place: NoisePlace;
  readonly treesM?: number;
}

export interface PathPredictionInput {
  readonly from: PathStation;
  readonly to: PathStation;
  readonly profile: Profile;
  readonly geodesy: Geodesy;
  /** What `from` transmits on, and what it receives on where that differs. */
  readonly frequencyHz: number;
  readonly returnFrequencyHz?: number;
  readonly service: RadioService;
  readonly widthHz: number;
  readonly polarization?: Polarization;
  /** Magnetic declination at `from` and `to`, degrees, where a model covers the date. */
  readonly declinationDeg?: { readonly from: number; readonly to: number };
}

export interface PathBearings {
  readonly distanceM: number;
  /** True, from each end to the other. */
  readonly bearingDeg: number;
  readonly returnBearingDeg: number;
  readonly magneticBearingDeg?: number;
  readonly magneticReturnBearingDeg?: number;
}

export type PathPrediction = PathBearings &
  (
    | {
        readonly ok: true;
        /** From `from` to `to`; absent if `from` only listens. */
        readonly there?: LinkBudget;
        readonly back?: LinkBudget;
        /** The direction with the smaller chance: what a conversation hangs on. */
        readonly worse: LinkBudget;
        readonly obstacle?: Obstacle & { readonly position: Position };
      }
    | {
        readonly ok: false;
        readonly reason: string;
        /** The first stretch without elevation data; absent where neither station transmits. */
        readonly gap?: Stretch;
      }
  );

export function predictPath(input: PathPredictionInput): PathPrediction {
  const { from, to, geodesy, declinationDeg } = input;
  const line = geodesy.line(from.position, to.position);
  const returnBearingDeg = compass(line.finalBearingDeg + 180);
  const bearings: PathBearings = {
    distanceM: line.distanceM,
    bearingDeg: line.bearingDeg,
    returnBearingDeg,
    ...(declinationDeg
      ? {
          magneticBearingDeg: compass(line.bearingDeg - declinationDeg.from),
          magneticReturnBearingDeg: compass(returnBearingDeg - declinationDeg.to),
        }
      : {}),
  };
  const there = oneWay(input, from, to, input.profile, input.frequencyHz);
  const back = oneWay(input, to, from, reversed(input.profile), input.returnFrequencyHz ?? input.frequencyHz);
  for (const answer of [there, back])
    if (answer?.ok === false) return { ...bearings, ok: false, reason: answer.reason, gap: answer.gap };
  const ways = [there, back].filter((answer): answer is LinkBudget => answer?.ok === true);
  const [first, second] = ways;
  if (!first) return { ...bearings, ok: false, reason: 'Neither station transmits.' };
  const worse = second && second.probability < first.probability ? second : first;
  const obstacle = obstacleFromStart(worse, worse !== there);
  const share = obstacle && line.distanceM > 0 ? (obstacle.alongKm * 1000) / line.distanceM : undefined;
  const [position] =
    share === undefined ? [] : geodesy.along(from.position, to.position, [Math.min(share, 1)]);
  return {
    ...bearings,
    ok: true,
    ...(there?.ok ? { there } : {}),
    ...(back?.ok ? { back } : {}),
    worse,
    ...(obstacle && position ? { obstacle: { ...obstacle, position } } : {}),
  };
}

function oneWay(
  input: PathPredictionInput,
  sender: PathStation,
  hearer: PathStation,
  profile: Profile,
  frequencyHz: number,
) {
  if (sender.powerW === undefined) return undefined;
  return linkBudget({
    profile,
    frequencyHz,
    service: input.service,
    widthHz: input.widthHz,
    ...(input.polarization ? { polarization: input.polarization } : {}),
    transmitter: { ...sender, powerW: sender.powerW },
    receiver: hearer,
  });
}

/** The same ground seen from the other end. */
export function reversed(profile: Profile): Profile {
  const lengthKm = profile.distancesKm.at(-1) ?? 0;
  const turn = ({ fromKm, toKm }: { fromKm: number; toKm: number }) => ({
    fromKm: lengthKm - toKm,
    toKm: lengthKm - fromKm,
  });
  return {
    ...profile,
    distancesKm: profile.distancesKm.map((km) => lengthKm - km).reverse(),
    heightsM: Float64Array.from(profile.heightsM).reverse(),
    gaps: profile.gaps.map(turn).reverse(),
    bridged: profile.bridged.map(turn).reverse(),
  };
}

function obstacleFromStart(budget: LinkBudget, isReversed: boolean): Obstacle | undefined {
  const { obstacle } = budget;
  if (!obstacle || !isReversed) return obstacle;
  return { ...obstacle, alongKm: budget.distanceM / 1000 - obstacle.alongKm };
}
