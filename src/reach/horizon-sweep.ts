/**
 * What each cell of a bundle of rays has to do with its horizons: the edge parameter v of the Bullington construction where it lies beyond
 * the horizon (eqs (13), (14), (17) and (18) of Recommendation ITU-R P.1812-8), and the heights of the two antennas above the smooth surface fitted to the
 * ground (its Attachment 1 §5.6, eqs (85) to (90)). Read off running maxima, running sums and hulls instead of the whole profile.
 *
 * The ray under which the ground is known passes beside the cell. Where that counts, at the horizons and for the last {@link nearSamples} samples, the
 * ground is carried across to the line that leads straight to the cell, along its own slope.
 */
import {
  type CellBatch,
  type GroundAhead,
  groundOf,
  perSample,
  sightOf,
  slopeOf,
  tiltOf,
} from './ground-ahead.ts';
import { addToHull, farthestAbove, highestSeenBack, type UpperHull } from './upper-hull.ts';

export interface HorizonTerms {
  /** Ground under the station and its antenna, m above sea level. */
  readonly stationGroundM: number;
  readonly stationM: number;
  readonly cellAntennaM: number;
  /** Fall of the earth, m per km². */
  readonly perKm2: number;
  readonly wavelengthM: number;
}

/** Hulls of the ground with the earth falling away, and on a flat earth. */
export interface Hulls {
  readonly curved: UpperHull;
  readonly flat: UpperHull;
}

/** What is filled, of each cell. */
export interface HorizonBatch {
  /** v of the cells beyond the horizon; NaN for those in sight. */
  readonly v: Float64Array;
  /** Antennas above the smooth surface, m: the station's and the cell's in turn. */
  readonly aboveM: Float32Array;
  /** Slopes at which the path leaves the station and the cell, towards the other or over the horizon, m/km. */
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
 * @param hulls of the samples up to and with `from - nearSamples - 1`; filled up to `to - nearSamples - 1`
 */
export function fillHorizons(
  { stationGroundM, stationM, cellAntennaM, perKm2, wavelengthM }: HorizonTerms,
  { slope, firstKm, lead }: RaySteps,
  { km, samples, steepestAt, steepestFlatAt, sum, moment }: GroundAhead,
  cells: CellBatch,
  { curved, flat }: Hulls,
  { v, aboveM, leaving, arriving }: HorizonBatch,
  from: number,
  to: number,
): void {
  const perWave = 0.002 / wavelengthM;
  const perFirstKm = 1 / firstKm;
  const perStep = (to - from) / ((km[to - 1] ?? 0) - (km[from - 1] ?? 0));
  // The fall of the earth makes the ground that much less hollow.
  const leastHollow = 2 * perKm2 * firstKm * firstKm;
  const { count } = cells;
  let next = Math.max(1, from - nearSamples);
  let seenCurved = 0;
  let seenFlat = 0;
  let top = 0;
  for (let index = 0; index <= count; index++) {
    // After the last cell the hulls take in what is left.
    const at = index < count ? (cells.at[index] ?? 0) : to;
    const far = at > nearSamples ? at - nearSamples : 1;
    for (; next < far; next++) {
      const place = perSample * next + groundOf;
      const h = samples[place] ?? 0;
      // A sample that lies lower than the middle of its neighbours is nobody's horizon.
      const hollow = (samples[place - perSample] ?? 0) + (samples[place + perSample] ?? 0) - 2 * h;
      if (hollow > leastHollow && next > 1) continue;
      const x = km[next] ?? 0;
      addToHull(curved, x, h - perKm2 * x * x, next);
      addToHull(flat, x, h, next);
    }
    if (index === count) return;

    const d = km[at] ?? 0;
    const h = cells.groundM[index] ?? 0;
    const aside = cells.aside[index] ?? 0;
    const cellM = h + cellAntennaM;
    const perD = 1 / d;
    const line = (cellM - stationM) * perD;
    const asidePerStep = aside * perD * firstKm;
    const cellSlope = slope + asidePerStep;

    // Horizons far before the cell, each carried across to the line to the cell.
    const steepest = steepestAt[far - 1] ?? 0;
    const highestSight = perSample * steepest;
    let steep =
      (samples[highestSight + sightOf] ?? 0) +
      (samples[highestSight + tiltOf] ?? 0) *
        (cellSlope - (samples[highestSight + slopeOf] ?? 0)) *
        perFirstKm;
    const steepestFlat = steepestFlatAt[far - 1] ?? 0;
    const highestFlat = perSample * steepestFlat;
    let fromStart =
      (samples[highestFlat + sightOf] ?? 0) +
      perKm2 * (km[steepestFlat] ?? 0) +
      (samples[highestFlat + tiltOf] ?? 0) * (cellSlope - (samples[highestFlat + slopeOf] ?? 0)) * perFirstKm;

    // The near samples one by one: the steepest slope from the station, and back from the cell.
    let nearSight = -1e9;
    let nearSightAt = far;
    let backSteps = -1e9;
    const across = aside * perD;
    let moved = asidePerStep * (lead + far - 1);
    for (let sample = far, place = perSample * far; sample < at; sample++, place += perSample) {
      const tilt = samples[place + tiltOf] ?? 0;
      const seen = (samples[place + sightOf] ?? 0) + tilt * across;
      if (seen > nearSight) {
        nearSight = seen;
        nearSightAt = sample;
      }
      const rise = ((samples[place + groundOf] ?? 0) + tilt * moved - cellM) * (overSteps[at - sample] ?? 0);
      if (rise > backSteps) backSteps = rise;
      moved += asidePerStep;
    }
    if (nearSight > steep) steep = nearSight;
    const nearKm = km[nearSightAt] ?? 0;
    const nearLevel = nearSight + perKm2 * nearKm;
    if (nearLevel > fromStart) fromStart = nearLevel;
    let backFlat = backSteps * perStep;
    let back = backFlat + perKm2 * 2 * d;

    if (far > 1) {
      const fallenM = cellM - perKm2 * d * d;
      seenCurved = highestSeenBack(curved, d, fallenM, seenCurved);
      const slopeBack =
        ((curved.points[2 * seenCurved + 1] ?? 0) +
          movedM(samples, curved.names[seenCurved] ?? 0, cellSlope, lead) -
          fallenM) /
        (d - (curved.points[2 * seenCurved] ?? 0));
      if (slopeBack > back) back = slopeBack;
    }
    const curvedLine = line - perKm2 * d;
    leaving[index] = Math.max(steep, curvedLine);
    // Seen from the cell the earth falls away towards the station.
    arriving[index] = Math.max(back - 2 * perKm2 * d, -line - perKm2 * d);
    v[index] =
      steep < curvedLine
        ? Number.NaN
        : Math.sqrt(Math.max(0, (steep - curvedLine) * (back + curvedLine) * d * perWave));

    // The line fitted to the ground; its height at the two ends.
    const lastX = km[at - 1] ?? 0;
    const lastH = at === 1 ? stationGroundM : (samples[perSample * (at - 1) + groundOf] ?? 0);
    const u = (sum[at - 1] ?? 0) + (d - lastX) * (h + lastH);
    const w = (moment[at - 1] ?? 0) + (d - lastX) * (h * (2 * d + lastX) + lastH * (d + 2 * lastX));
    const mean = u * perD;
    const tilted = w * perD * perD;
    let startM = 2 * mean - tilted;
    let endM = tilted - mean;
    // Lowered where ground stands above the line of sight.
    fromStart -= line;
    if (fromStart > 0) {
      let highest = (nearLevel - line) * nearKm;
      if (far > 1) {
        seenFlat = highestSeenBack(flat, d, cellM, seenFlat);
        const slopeBack =
          ((flat.points[2 * seenFlat + 1] ?? 0) +
            movedM(samples, flat.names[seenFlat] ?? 0, cellSlope, lead) -
            cellM) /
          (d - (flat.points[2 * seenFlat] ?? 0));
        if (slopeBack > backFlat) backFlat = slopeBack;
        top = farthestAbove(flat, line, top);
        const above =
          (flat.points[2 * top + 1] ?? 0) +
          movedM(samples, flat.names[top] ?? 0, cellSlope, lead) -
          line * (flat.points[2 * top] ?? 0) -
          stationM;
        if (above > highest) highest = above;
      }
      const fromEnd = backFlat + line;
      const share = highest / (fromStart + fromEnd);
      startM -= share * fromStart;
      endM -= share * fromEnd;
    }
    aboveM[2 * index] = stationM - Math.min(startM, stationGroundM);
    aboveM[2 * index + 1] = cellM - Math.min(endM, h);
  }
}

/** How much higher the ground lies beside a sample, where the line to a cell passes it, m. */
function movedM(samples: Float64Array, sample: number, cellSlope: number, lead: number): number {
  const place = perSample * sample;
  return (samples[place + tiltOf] ?? 0) * (cellSlope - (samples[place + slopeOf] ?? 0)) * (lead + sample - 1);
}
