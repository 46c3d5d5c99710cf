/**
 * Every radio path that follows from a plan, predicted both ways: from each place where a member may be to
 * each repeater, digipeater and mailbox they use, and to each member they try to reach without one.
 *
 * A path stands once for all members who would use it with the same kind of radio from the same place.
 */
import type { Antenna, Place, Plan, Trial } from '../plan/model.ts';
import { antennaSituation } from '../reach/antenna-situation.ts';
import { radioHorizonKm } from '../reach/earth.ts';
import type { Geodesy } from '../reach/geodesy.ts';
import type { Terrain } from '../reach/mosaic.ts';
import type { NoisePlace } from '../reach/noise.ts';
import { type PathPrediction, type PathStation, predictPath, reversed } from '../reach/path-prediction.ts';
import { type Profile, profileOverTerrain, typedProfile } from '../reach/profile.ts';
import type { ChannelParticulars } from './channel-particulars.ts';
import type { Consequences } from './consequences.ts';
import { feedLossDb } from './feed-loss.ts';
import { type PathEnd, type Wanted, wantedPaths } from './wanted-paths.ts';

/** The ground and the globe, as loaded from outside. */
export interface Ground {
  readonly terrain: Terrain;
  readonly geodesy: Geodesy;
  /** Magnetic declination at a place of the plan, degrees, by its id; absent where no model covers the date. */
  readonly declinationDeg: ReadonlyMap<string, number>;
}

export interface RadioPath {
  readonly from: PathEnd;
  readonly to: PathEnd;
  /** Slot over which it goes. */
  readonly slot: number;
  /** Members who would use it. */
  readonly members: readonly string[];
  readonly prediction: PathPrediction;
  /** Of the antennas at both ends, above the ground. */
  readonly heightsM: { readonly from: number; readonly to: number };
  /** The ground under it, from `from` to `to`; absent where there are no data. */
  readonly profile?: Profile;
  /** How far the two antennas would see each other if all the ground between were as low as its lowest point, km. */
  readonly horizonKm?: number;
  /** What was really heard on it, the latest last. */
  readonly trials: readonly Trial[];
}

export function pathsOf(plan: Plan, consequences: Consequences, ground: Ground): readonly RadioPath[] {
  return wantedPaths(plan, consequences).map((wanted) => radioPath(plan, consequences, ground, wanted));
}

/** One path, whether or not the plan asks for it. Both ends must stand at places of the plan. */
export function radioPath(plan: Plan, consequences: Consequences, ground: Ground, wanted: Wanted): RadioPath {
  const trials = trialsOf(plan, wanted);
  const on = consequences.channels.get(wanted.slot);
  const [from, to] = [plan.places.get(wanted.from.place), plan.places.get(wanted.to.place)];
  if (!on || !from || !to)
    throw new Error(`a path from ${wanted.from.place} to ${wanted.to.place} names nothing`);
  const profile = profileBetween(plan, ground, from, to);
  const [there, back] = [
    stationAt(plan, consequences, wanted.from, wanted.members, on),
    stationAt(plan, consequences, wanted.to, [], on),
  ];
  const [declinedFrom, declinedTo] = [ground.declinationDeg.get(from.id), ground.declinationDeg.get(to.id)];
  const prediction = predictPath({
    from: there,
    to: back,
    profile,
    geodesy: ground.geodesy,
    frequencyHz: on.transmitHz ?? on.receiveHz,
    returnFrequencyHz: on.receiveHz,
    service: on.mode === 'packet' ? 'packet-1200' : 'fm-voice',
    widthHz: on.spacingHz,
    ...(declinedFrom !== undefined &&
      declinedTo !== undefined && { declinationDeg: { from: declinedFrom, to: declinedTo } }),
  });
  const heightsM = { from: there.antenna.heightM, to: back.antenna.heightM };
  if (profile.gaps.length > 0) return { ...wanted, prediction, heightsM, trials };
  return { ...wanted, prediction, heightsM, profile, horizonKm: horizonOver(profile, heightsM), trials };
}

function horizonOver({ heightsM }: Profile, antennas: RadioPath['heightsM']): number {
  const lowestM = heightsM.reduce((least, height) => Math.min(least, height));
  const above = (groundM: number | undefined) => (groundM ?? lowestM) - lowestM;
  return (
    radioHorizonKm(above(heightsM[0]) + antennas.from) + radioHorizonKm(above(heightsM.at(-1)) + antennas.to)
  );
}

/** The ground between two places: from the elevation files where they cover it, else as typed from a map. */
function profileBetween(plan: Plan, { terrain, geodesy }: Ground, from: Place, to: Place): Profile {
  const ends = {
    ...(from.elevationM !== undefined && { startElevationM: from.elevationM }),
    ...(to.elevationM !== undefined && { endElevationM: to.elevationM }),
  };
  const surveyed = profileOverTerrain(terrain, geodesy, from.at, to.at, ends);
  if (surveyed.gaps.length === 0) return surveyed;
  const typed = plan.terrain.profiles.find(
    (profile) =>
      (profile.from === from.id && profile.to === to.id) ||
      (profile.from === to.id && profile.to === from.id),
  );
  if (!typed) return surveyed;
  const lengthKm = geodesy.line(from.at, to.at).distanceM / 1000;
  const reading = typedProfile(
    typed.heights.map(([distanceM, heightM]) => [distanceM / 1000, heightM] as const),
    lengthKm,
  );
  if (!reading.ok) return surveyed;
  return typed.from === from.id ? reading.profile : reversed(reading.profile);
}

/**
 * How noisy a place is: buildings and their electronics at a base, nature elsewhere. The classes are those of
 * Recommendation ITU-R P.372; which place is which is this program's reading of its kind.
 */
const noiseAt: Readonly<Record<Place['kind'], NoisePlace>> = {
  base: 'residential',
  'high-ground': 'rural',
  relay: 'rural',
  field: 'rural',
};

export function stationAt(
  plan: Plan,
  consequences: Consequences,
  end: PathEnd,
  members: readonly string[],
  on: ChannelParticulars,
): PathStation {
  const place = plan.places.get(end.place);
  if (!place) throw new Error(`no place ${end.place}`);
  const noise = noiseAt[place.kind];
  if (end.kind !== 'member') {
    const station =
      end.kind === 'repeater'
        ? plan.repeaters.get(end.id)
        : end.kind === 'mailbox'
          ? plan.mailboxes.get(end.id)
          : plan.digipeaters.get(end.id);
    return {
      position: place.at,
      ...aerial(station?.antenna ?? {}, 'mast', on),
      ...(station?.powerW !== undefined && { powerW: station.powerW }),
      ...(station?.sensitivityDbm !== undefined && { sensitivityDbm: station.sensitivityDbm }),
      place: noise,
    };
  }
  const radio = plan.radios.get(end.radio);
  if (!radio) throw new Error(`no radio ${end.radio}`);
  const holders = members.length > 0 ? members : consequences.holdersOf(end.radio);
  const settings = holders.flatMap((member) => consequences.use(member, end.radio, on.slot)?.setting ?? []);
  const powerW = settings.length > 0 ? Math.min(...settings.map((setting) => setting.powerW)) : undefined;
  const treesM = place.kind === 'field' ? treesInField(plan, end.radio) : undefined;
  return {
    position: place.at,
    ...aerial(radio.antenna, 'hand', on),
    ...(powerW !== undefined && { powerW }),
    ...(radio.sensitivityDbm !== undefined && { sensitivityDbm: radio.sensitivityDbm }),
    place: noise,
    ...(treesM !== undefined && { treesM }),
  };
}

/** Height of the trees around whoever stands in the field with a radio, m: none above an antenna on a mast. */
export function treesInField(plan: Plan, radio: string): number | undefined {
  return plan.radios.get(radio)?.antenna.carried === 'mast' ? undefined : plan.terrain.woodlandM;
}

function aerial(
  antenna: Antenna,
  usually: 'mast' | 'hand',
  on: ChannelParticulars,
): Pick<PathStation, 'antenna' | 'feedLossDb'> {
  const { gainDbi, heightM, counterpoise } = antenna;
  const frequencyHz = on.transmitHz ?? on.receiveHz;
  const situation = antennaSituation(
    {
      carried: antenna.carried ?? usually,
      ...(gainDbi !== undefined && { gainDbi }),
      ...(heightM !== undefined && { heightM }),
      ...(counterpoise !== undefined && { counterpoise }),
    },
    frequencyHz,
  );
  return { antenna: situation, feedLossDb: feedLossDb(antenna, frequencyHz) };
}

/** Trials of the same way with the same kind of radio; a trial that names no radio or channel counts for all. */
function trialsOf(plan: Plan, { from, to, slot }: Wanted): readonly Trial[] {
  if (from.kind !== 'member') return [];
  return plan.trials
    .filter((trial) => {
      const start = plan.members.get(trial.from)?.at ?? trial.from;
      const there =
        to.kind === 'member' ? (plan.members.get(trial.to)?.at ?? trial.to) === to.place : trial.to === to.id;
      const alike = trial.channel === undefined || trial.channel === slot || to.kind !== 'member';
      return (
        start === from.place && there && alike && (trial.radio === undefined || trial.radio === from.radio)
      );
    })
    .toSorted((a, b) => (a.date < b.date ? -1 : 1));
}
