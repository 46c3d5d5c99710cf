/** Where to walk, or how high to raise an antenna, so that a path of a plan closes with the chance wanted. */
import type { Plan, Trial } from '../plan/model.ts';
import { antennaRise } from '../reach/antenna-rise.ts';
import type { LinkBudget } from '../reach/link-budget.ts';
import {
  fastestMs,
  type GroundAnswer,
  type GroundSearch,
  marginM,
  nearestGround,
  type Spot,
} from '../reach/nearest-ground.ts';
import { reversed } from '../reach/path-prediction.ts';
import { groundUnder } from '../reach/stitch-grids.ts';
import { chanceOf } from '../reach/verdict.ts';
import type { Consequences } from './consequences.ts';
import { type Ground, type RadioPath, radioPath, stationAt } from './paths.ts';
import type { Wanted } from './wanted-paths.ts';

export interface GroundWish {
  readonly path: Wanted;
  /** Chance wanted, 0 … 1. */
  readonly chance: number;
  readonly mostWalkS: number;
  readonly onPaths: boolean;
  readonly count: number;
}

export interface GroundFound {
  readonly path: RadioPath;
  /** Budget of the worse direction from where they stand. */
  readonly worse: LinkBudget;
  /** Spots with the chance wanted; where a trial overrules the prediction, with {@link clearlyBetterDb} more than here. */
  readonly answer: GroundAnswer;
  /** The latest trial, where it heard nothing or only fragments although the path is predicted to close here. */
  readonly overruledBy?: Trial;
  /** The least height of their antenna above the ground that would do where they stand; undefined if none up to {@link highestM}. */
  readonly raisedToM?: number;
}

/** A wire over a branch or a pole lashed to a pack frame; more is a mast. */
export const highestM = 10;

/**
 * How much more margin is worth a walk where the prediction was too hopeful: an FM signal falls from noisy but readable
 * to nothing within some 10 dB (the same judgement as in `reach/heard.ts`).
 */
export const clearlyBetterDb = 10;

export type GroundOutcome =
  | ({ readonly ok: true } & GroundFound)
  | { readonly ok: false; readonly reason: string };

export function groundSearch(
  plan: Plan,
  consequences: Consequences,
  ground: Ground,
  wish: GroundWish,
): GroundOutcome {
  const path = radioPath(plan, consequences, ground, wish.path);
  const { prediction } = path;
  if (!prediction.ok) return { ok: false, reason: prediction.reason };
  const [from, to] = [plan.places.get(wish.path.from.place), plan.places.get(wish.path.to.place)];
  const on = consequences.channels.get(wish.path.slot);
  if (!from || !to || !on) return { ok: false, reason: 'The places or the channel are not in the plan.' };
  const grid = groundUnder(ground.terrain.grids, [from.at, to.at], wish.mostWalkS * fastestMs + marginM);
  if (!grid) {
    return {
      ok: false,
      reason: `No elevation file, nor files that join at the same step, cover both ${from.name} and ${to.name}.`,
    };
  }

  const walker = stationAt(plan, consequences, wish.path.from, wish.path.members, on);
  const station = stationAt(plan, consequences, wish.path.to, [], on);
  const { worse } = prediction;
  const spent = worse.parts
    .filter(({ what }) => what === 'free space' || what === 'diffraction')
    .reduce((sum, { db }) => sum - db, 0);
  const search: GroundSearch = {
    grid,
    from: from.at,
    station: {
      position: to.at,
      antennaM: station.antenna.heightM,
      ...(to.elevationM !== undefined && { elevationM: to.elevationM }),
    },
    cellAntennaM: walker.antenna.heightM,
    frequencyHz: on.transmitHz ?? on.receiveHz,
    greatestLossDb: worse.marginDb + spent,
    spreadDb: worse.spreadDb,
    wanted: wish.chance,
    mostWalkS: wish.mostWalkS,
    isOnPath: wish.onPaths,
    count: wish.count,
  };
  const found = nearestGround(search);
  const last = path.trials.at(-1);
  const overruledBy = worse.probability >= wish.chance && last && !wasRead(last) ? last : undefined;
  const answer =
    overruledBy && found.ok
      ? groundAbove(search, Math.max(worse.marginDb, found.here.marginDb) + clearlyBetterDb)
      : found;
  const outward = prediction.there === worse;
  const sender = outward ? walker : station;
  const { profile } = path;
  const raised =
    profile && sender.powerW !== undefined
      ? antennaRise(
          {
            profile: outward ? profile : reversed(profile),
            frequencyHz: outward ? (on.transmitHz ?? on.receiveHz) : on.receiveHz,
            service: on.mode === 'packet' ? 'packet-1200' : 'fm-voice',
            widthHz: on.spacingHz,
            transmitter: { ...sender, powerW: sender.powerW },
            receiver: outward ? station : walker,
          },
          outward ? 'transmitter' : 'receiver',
          wish.chance,
          highestM,
        )
      : undefined;
  return {
    ok: true,
    path,
    worse,
    answer,
    ...(overruledBy && { overruledBy }),
    ...(raised && { raisedToM: raised.heightM }),
  };
}

/** Whether the words came through. */
export function wasRead({ heard }: Trial): boolean {
  return heard === 'readable' || heard === 'weak';
}

/**
 * Ground with at least so much margin. A chance cannot stand for it, since chances of great margins are all the same
 * figure: so that much is taken from what may be lost, an even chance is asked for, and it is given back afterwards.
 */
function groundAbove(search: GroundSearch, leastMarginDb: number): GroundAnswer {
  const { greatestLossDb, spreadDb } = search;
  const answer = nearestGround({ ...search, greatestLossDb: greatestLossDb - leastMarginDb, wanted: 0.5 });
  if (!answer.ok) return answer;
  const restored = (spot: Spot): Spot => {
    const marginDb = greatestLossDb - spot.lossDb;
    return { ...spot, marginDb, probability: chanceOf(marginDb, spreadDb) };
  };
  return {
    ok: true,
    here: restored(answer.here),
    spots: answer.spots.map(restored),
    best: restored(answer.best),
  };
}
