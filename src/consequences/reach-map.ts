/**
 * From where a station is reached: what a sweep over the ground needs, and what the path may lose before the margin
 * is gone. The map stands for one kind of radio, carried in the field: under the trees of the plan, where it names any.
 */
import type { Plan } from '../plan/model.ts';
import { medianEarthRadiusKm } from '../reach/earth.ts';
import type { ElevationGrid } from '../reach/grid.ts';
import type { SweepSettings } from '../reach/loss-sweep.ts';
import type { Position } from '../reach/position.ts';
import { groundUnder } from '../reach/stitch-grids.ts';
import type { Consequences } from './consequences.ts';
import { type Ground, radioPath, stationAt, treesInField } from './paths.ts';
import type { PathEnd } from './wanted-paths.ts';

export interface ReachMap {
  readonly grid: ElevationGrid;
  readonly station: Position;
  /** Ground under it, where the plan states it. */
  readonly elevationM?: number;
  readonly settings: SweepSettings;
  /** What free space, diffraction and woodland may take together in the worse direction, dB. */
  readonly greatestLossDb: number;
  readonly spreadDb: number;
}

export type ReachMapOutcome =
  | ({ readonly ok: true } & ReachMap)
  | { readonly ok: false; readonly reason: string };

export function reachMap(
  plan: Plan,
  consequences: Consequences,
  ground: Ground,
  station: PathEnd,
  radio: string,
  slot: number,
): ReachMapOutcome {
  const place = plan.places.get(station.place);
  const on = consequences.channels.get(slot);
  if (!place || !on) return { ok: false, reason: 'The station or the channel is not in the plan.' };
  const grid = groundUnder(ground.terrain.grids, [place.at]);
  if (!grid) return { ok: false, reason: `No elevation file covers ${place.name}.` };
  // Any other place gives the budget, once what the ground takes is added back; best one in the field, where the noise is that of a cell.
  const others = [...plan.places.values()].filter(({ id }) => id !== place.id);
  const cellTreesM = treesInField(plan, radio);
  for (const other of others.toSorted((a, b) => Number(b.kind === 'field') - Number(a.kind === 'field'))) {
    const from = { kind: 'member' as const, place: other.id, radio };
    const { prediction } = radioPath(plan, consequences, ground, { from, to: station, slot, members: [] });
    if (!prediction.ok) continue;
    const { worse } = prediction;
    const ofTheGround = new Set([
      'free space',
      'diffraction',
      'woodland at the transmitter',
      'woodland at the receiver',
    ]);
    const spent = worse.parts
      .filter(({ what }) => ofTheGround.has(what))
      .reduce((sum, { db }) => sum - db, 0);
    const at = stationAt(plan, consequences, station, [], on);
    return {
      ok: true,
      grid,
      station: place.at,
      ...(place.elevationM !== undefined && { elevationM: place.elevationM }),
      settings: {
        frequencyHz: on.transmitHz ?? on.receiveHz,
        polarization: 'vertical',
        stationAntennaM: at.antenna.heightM,
        cellAntennaM: stationAt(plan, consequences, from, [], on).antenna.heightM,
        earthRadiusKm: medianEarthRadiusKm,
        ...(at.treesM !== undefined && { stationTreesM: at.treesM }),
        ...(cellTreesM !== undefined && { cellTreesM }),
      },
      greatestLossDb: worse.marginDb + spent,
      spreadDb: worse.spreadDb,
    };
  }
  return { ok: false, reason: 'No other place of the plan has ground from which to reckon.' };
}
