/**
 * Ground along a path: sampled from elevation grids on the geodesic, or typed by hand from a map. A stretch without data is said,
 * never taken for flat ground.
 */
import type { Geodesy } from './geodesy.ts';
import type { Terrain } from './mosaic.ts';
import type { Position } from './position.ts';

export interface Stretch {
  readonly fromKm: number;
  readonly toKm: number;
}

export interface Profile {
  /** From the first end, km, beginning with 0, evenly or unevenly rising; at least three. */
  readonly distancesKm: Float64Array;
  /** Ground above sea level, m; NaN inside a gap that was not bridged. */
  readonly heightsM: Float64Array;
  readonly basis: 'grid' | 'typed';
  /** Points that a person typed, where `basis` is `typed`. */
  readonly typedPoints?: number;
  /** Stretches where no grid has a height: too long to bridge. */
  readonly gaps: readonly Stretch[];
  /** Short stretches without data, filled in along a straight line. */
  readonly bridged: readonly Stretch[];
}

export type TypedProfileReading =
  | { readonly ok: true; readonly profile: Profile }
  | { readonly ok: false; readonly reason: string };

/**
 * Samples lie no further apart than the method wants (it goes wrong on sparse profiles), nor nearer than the ground is known in any
 * grid; a sample within a few metres of a hand-held antenna would read as a cliff before it.
 */
const stepBoundsM = { nearest: 20, furthest: 100 } as const;

/** The longest hole in a grid, usually a radar shadow of a few cells, that is filled along a straight line, km. */
const longestBridgeKm = 0.5;

/** Stated elevations of the ends, where a plan gives them, stand before those of the grid. */
export interface ProfileEnds {
  readonly startElevationM?: number;
  readonly endElevationM?: number;
}

/** Ground between two places, evenly sampled about as finely as the finest grid at their ends. */
export function profileOverTerrain(
  terrain: Terrain,
  geodesy: Geodesy,
  from: Position,
  to: Position,
  ends: ProfileEnds = {},
): Profile {
  const lengthM = geodesy.line(from, to).distanceM;
  const gridStepM = Math.min(terrain.stepM(from) ?? Infinity, terrain.stepM(to) ?? Infinity);
  const stepM = Math.min(Math.max(gridStepM, stepBoundsM.nearest), stepBoundsM.furthest);
  const steps = Math.max(2, Math.ceil(lengthM / stepM));
  const shares = Array.from({ length: steps + 1 }, (_, index) => index / steps);
  const distancesKm = Float64Array.from(shares, (share) => (share * lengthM) / 1000);
  const heightsM = Float64Array.from(
    geodesy.along(from, to, shares),
    (place) => terrain.heightM(place) ?? Number.NaN,
  );
  if (ends.startElevationM !== undefined) heightsM[0] = ends.startElevationM;
  if (ends.endElevationM !== undefined) heightsM[steps] = ends.endElevationM;
  return { distancesKm, heightsM, basis: 'grid', ...bridgeGaps(distancesKm, heightsM) };
}

/**
 * A profile typed from a map as [km, metres] pairs, carried along straight lines between them at the step the method wants.
 * @param lengthKm distance between the two places, where it is known; a profile more than 5 % longer or shorter is refused.
 */
export function typedProfile(
  points: readonly (readonly [number, number])[],
  lengthKm?: number,
): TypedProfileReading {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) {
    return {
      ok: false,
      reason: `A typed profile needs at least three points; this one has ${points.length}.`,
    };
  }
  if (first[0] !== 0)
    return { ok: false, reason: `A typed profile begins at 0 km; this one begins at ${first[0]} km.` };
  for (const [index, [km, height]] of points.entries()) {
    const before = points[index - 1];
    if (!Number.isFinite(km) || !Number.isFinite(height))
      return { ok: false, reason: `Point ${index + 1} of the profile is not two numbers.` };
    if (before && km <= before[0]) {
      return {
        ok: false,
        reason: `Distances of a typed profile rise; ${km} km comes after ${before[0]} km.`,
      };
    }
  }
  const typedKm = last[0];
  if (lengthKm !== undefined && Math.abs(typedKm - lengthKm) > 0.05 * lengthKm) {
    return {
      ok: false,
      reason: `The typed profile is ${typedKm} km long; the places are ${lengthKm.toFixed(2)} km apart.`,
    };
  }
  const steps = Math.max(2, Math.ceil((typedKm * 1000) / stepBoundsM.furthest));
  const distancesKm = Float64Array.from({ length: steps + 1 }, (_, index) => (index / steps) * typedKm);
  const heightsM = Float64Array.from(distancesKm, (km) => heightOnLines(points, km));
  return {
    ok: true,
    profile: { distancesKm, heightsM, basis: 'typed', typedPoints: points.length, gaps: [], bridged: [] },
  };
}

function heightOnLines(points: readonly (readonly [number, number])[], km: number): number {
  const after = Math.max(
    1,
    points.findIndex(([distance]) => distance >= km - 1e-12),
  );
  const [x0, h0] = points[after - 1] ?? [0, 0];
  const [x1, h1] = points[after] ?? [1, h0];
  return h0 + ((h1 - h0) * (km - x0)) / (x1 - x0);
}

/** Fills short holes in place, and lists the others. */
function bridgeGaps(
  x: Float64Array,
  h: Float64Array,
): { readonly gaps: readonly Stretch[]; readonly bridged: readonly Stretch[] } {
  const gaps: Stretch[] = [];
  const bridged: Stretch[] = [];
  const last = x.length - 1;
  for (let start = 0; start <= last; start++) {
    if (!Number.isNaN(h[start])) continue;
    let end = start;
    while (end < last && Number.isNaN(h[end + 1])) end++;
    const [before, after] = [start - 1, end + 1];
    const stretch = { fromKm: x[Math.max(before, 0)] ?? 0, toKm: x[Math.min(after, last)] ?? 0 };
    // A hole at an end cannot be bridged: the ground under the antenna itself is unknown.
    if (before >= 0 && after <= last && stretch.toKm - stretch.fromKm <= longestBridgeKm) {
      const [h0, h1] = [h[before] ?? 0, h[after] ?? 0];
      for (let index = start; index <= end; index++) {
        h[index] = h0 + ((h1 - h0) * ((x[index] ?? 0) - stretch.fromKm)) / (stretch.toKm - stretch.fromKm);
      }
      bridged.push(stretch);
    } else {
      gaps.push(stretch);
    }
    start = end;
  }
  return { gaps, bridged };
}
