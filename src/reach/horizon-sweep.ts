/**
 * What each cell of a bundle of rays has to do with its horizons: the edge parameter v of the Bullington construction where it lies beyond
 * the horizon (eqs (13), (14), (17) and (18) of Recommendation ITU-R P.1812-8), and the heights of the two antennas above the smooth surface fitted to the
 * ground (its Attachment 1 §5.6, eqs (85) to (90)). Read off running maxima, running sums and hulls instead of the whole profile.
 *
 * The ray under which the ground is known passes beside the cell. Where that counts, at the horizons and for the last {@link nearSamples} samples, the
 * ground is carried across to the line that leads straight to the cell, along its own slope.
 */
import type { AboveBatch } from './excess-table.ts';
import type { CellBatch, GroundAhead, StationTerms } from './ground-ahead.ts';
import { addToHull, farthestAbove, highestSeenBack, type UpperHull } from './upper-hull.ts';

export interface HorizonTerms extends StationTerms {
  readonly cellAntennaM: number;
  readonly wavelengthM: number;
  /** Whether the slopes at which a path leaves its ends are wanted. */
  readonly isWooded: boolean;
}

/** What is filled, of each cell. */
export interface HorizonBatch {
  /** v of the cells beyond the horizon; NaN for those in sight. */
  readonly v: Float64Array;
  /** Antennas above the smooth surface, m. */
  readonly above: AboveBatch;
  /** Slopes at which the path leaves the station and the cell, towards the other or over the horizon, m/km; where they are wanted. */
  readonly leaving: Float64Array;
  readonly arriving: Float64Array;
}

/** The ray along which the ground was taken: cells aside for each step, km for each step, and how many steps before sample 1 it begins. */
export interface RaySteps {
  readonly slope: number;
  readonly firstKm: number;
  readonly lead: number;
}

/** A metre aside on a steep slope is a step before the feet of a low antenna, and nothing to it a hundred metres on. */
export const nearSamples = 4;

const overSteps = Float64Array.from({ length: nearSamples + 1 }, (_, steps) => 1 / steps);

/**
 * @param hull of the samples, with the earth falling away, up to and with `from - nearSamples - 1`; filled up to `to - nearSamples - 1`
 */
export function fillHorizons(
  { stationGroundM, stationM, cellAntennaM, perKm2, wavelengthM, isWooded }: HorizonTerms,
  { slope, firstKm, lead }: RaySteps,
  { km, groundM, tiltM, slope: slopes, sight, steepestAt, sum, moment }: GroundAhead,
  cells: CellBatch,
  hull: UpperHull,
  { v, above, leaving, arriving }: HorizonBatch,
  from: number,
  to: number,
): void {
  const perWave = 0.002 / wavelengthM;
  const perFirstKm = 1 / firstKm;
  const perStep = (to - from) / ((km[to - 1] ?? 0) - (km[from - 1] ?? 0));
  // The fall of the earth makes the ground that much less hollow.
  const leastHollow = 2 * perKm2 * firstKm * firstKm;
  const { count } = cells;
  const { points, names, asked } = hull;
  const { metres: aboveM } = above;
  const near = nearSamples;
  const perSteps = overSteps;
  let next = Math.max(1, from - near);
  let seen = 0;
  let top = 0;
  for (let index = 0; index <= count; index++) {
    // After the last cell the hull takes in what is left.
    const at = index < count ? (cells.at[index] ?? 0) : to;
    const far = at > near ? at - near : 1;
    for (; next < far; next++) {
      const h = groundM[next] ?? 0;
      // A sample that lies lower than the middle of its neighbours is nobody's horizon.
      const hollow = (groundM[next - 1] ?? 0) + (groundM[next + 1] ?? 0) - 2 * h;
      if (hollow > leastHollow && next > 1) continue;
      const x = km[next] ?? 0;
      asked[0] = x;
      asked[1] = h - perKm2 * x * x;
      addToHull(hull, next);
    }
    if (index === count) return;

    const d = km[at] ?? 0;
    const h = cells.groundM[index] ?? 0;
    const aside = cells.aside[index] ?? 0;
    const cellM = h + cellAntennaM;
    const perD = 1 / d;
    const line = (cellM - stationM) * perD;
    const across = aside * perD;
    const asidePerStep = across * firstKm;
    const cellSlope = slope + asidePerStep;

    // Horizons far before the cell, each carried across to the line to the cell.
    const steepest = steepestAt[at - 1] ?? 0;
    const steep =
      (sight[steepest] ?? 0) + (tiltM[steepest] ?? 0) * (cellSlope - (slopes[steepest] ?? 0)) * perFirstKm;
    const steepestKm = km[steepest] ?? 0;

    // The near samples one by one: the steepest slope from the station, and back from the cell.
    let backSteps = -1e9;
    let moved = asidePerStep * (lead + far - 1);
    for (let sample = far; sample < at; sample++) {
      const tilt = tiltM[sample] ?? 0;
      const rise = ((groundM[sample] ?? 0) + tilt * moved - cellM) * (perSteps[at - sample] ?? 0);
      if (rise > backSteps) backSteps = rise;
      moved += asidePerStep;
    }
    let back = backSteps * perStep + perKm2 * 2 * d;
    let backKm = d;

    if (far > 1) {
      const fallenM = cellM - perKm2 * d * d;
      asked[0] = d;
      asked[1] = fallenM;
      seen = highestSeenBack(hull, seen);
      const name = names[seen] ?? 0;
      const seenKm = points[2 * seen] ?? 0;
      const movedM = (tiltM[name] ?? 0) * (cellSlope - (slopes[name] ?? 0)) * (lead + name - 1);
      const slopeBack = ((points[2 * seen + 1] ?? 0) + movedM - fallenM) / (d - seenKm);
      if (slopeBack > back) {
        back = slopeBack;
        backKm = seenKm;
      }
    }
    const curvedLine = line - perKm2 * d;
    if (isWooded) {
      leaving[index] = Math.max(steep, curvedLine);
      // Seen from the cell the earth falls away towards the station.
      arriving[index] = Math.max(back - 2 * perKm2 * d, -line - perKm2 * d);
    }
    v[index] =
      steep < curvedLine
        ? Number.NaN
        : Math.sqrt(Math.max(0, (steep - curvedLine) * (back + curvedLine) * d * perWave));

    // The line fitted to the ground; its height at the two ends.
    const lastX = km[at - 1] ?? 0;
    const lastH = at === 1 ? stationGroundM : (groundM[at - 1] ?? 0);
    const u = (sum[at - 1] ?? 0) + (d - lastX) * (h + lastH);
    const w = (moment[at - 1] ?? 0) + (d - lastX) * (h * (2 * d + lastX) + lastH * (d + 2 * lastX));
    const mean = u * perD;
    const tilted = w * perD * perD;
    let startM = 2 * mean - tilted;
    let endM = tilted - mean;
    // Lowered where ground stands above the line of sight; the slopes to it are those on a flat earth, of the samples that are horizons on the round one.
    const fromStart = steep + perKm2 * steepestKm - line;
    if (fromStart > 0) {
      let highest = fromStart * steepestKm;
      if (far > 1) {
        asked[0] = line;
        asked[1] = perKm2;
        top = farthestAbove(hull, top);
        const x = points[2 * top] ?? 0;
        const above = (points[2 * top + 1] ?? 0) + (perKm2 * x - line) * x - stationM;
        if (above > highest) highest = above;
      }
      const fromEnd = back - perKm2 * (d + backKm) + line;
      const share = highest / (fromStart + fromEnd);
      startM -= share * fromStart;
      endM -= share * fromEnd;
    }
    aboveM[2 * index] = stationM - Math.min(startM, stationGroundM);
    aboveM[2 * index + 1] = cellM - Math.min(endM, h);
  }
}
