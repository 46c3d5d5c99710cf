/**
 * The smooth-earth part of the delta-Bullington loss, `max(Lp - Ls, 0)`, for rasters: the same equations as in {@link ./spherical-earth.ts} and
 * {@link ./diffraction.ts}, with everything that depends on frequency alone worked out once, powers and logarithms from tables, and the
 * Bullington profile over the smooth earth found without walking it.
 *
 * Source: Recommendation ITU-R P.1812-8 §4.3.1 to §4.3.4, eqs (22) to (39), over land.
 */
import { bullingtonOfEdgeDb } from './bullington-table.ts';
import { decibels20 } from './decibel-table.ts';
import { type ResidueTerms, residueTable, residueTerms } from './residue-terms.ts';
import type { Polarization } from './spherical-earth.ts';

export interface SmoothEarth {
  /** Fall of the earth, m per km². */
  readonly perKm2: number;
  readonly horizonFactor: number;
  readonly nearFactor: number;
  readonly perWave: number;
  /** Eqs (29) to (32) at the radius of the earth, and at lesser ones by the distance over the roots of the heights. */
  readonly own: ResidueTerms;
  readonly lesser: Float64Array;
}

/** Steps of the table of lesser radii for each unit of `d / (sqrt h1 + sqrt h2)`, km and m. */
const perUnit = 1024;

export function smoothEarth(
  frequencyHz: number,
  wavelengthM: number,
  polarization: Polarization,
  earthRadiusKm: number,
): SmoothEarth {
  const horizonFactor = Math.sqrt(2 * earthRadiusKm) / Math.sqrt(1000);
  const terms = (radiusKm: number) => residueTerms(radiusKm, frequencyHz, polarization);
  return {
    perKm2: 500 / earthRadiusKm,
    horizonFactor,
    nearFactor: 17.456 * Math.sqrt(wavelengthM),
    perWave: 0.002 / wavelengthM,
    own: terms(earthRadiusKm),
    // Eq (26): the radius for which the antennas just see each other.
    lesser: residueTable(
      (index) => terms(500 * (Math.max(index, 1) / perUnit) ** 2),
      Math.ceil(horizonFactor * perUnit) + 2,
    ),
  };
}

/** Where the first and the last sample between the antennas stand on a path, km, and how many there are. */
export interface SmoothSamples {
  readonly firstKm: number;
  readonly lastKm: number;
  readonly samples: number;
}

/**
 * What the smooth earth takes more than Bullington over it, `Lp - Ls`, dB: eq (39) adds it where it is above 0. Below 0 it says only that, so
 * that it runs on smoothly there. Heights of the antennas above the surface, m.
 */
export function smoothExcessDb(
  earth: SmoothEarth,
  d: number,
  h1: number,
  h2: number,
  between: SmoothSamples,
): number {
  const spherical = sphericalDb(earth, d, h1, h2);
  return spherical <= 0
    ? spherical
    : spherical - bullingtonOfEdgeDb(smoothEdge(earth, d, h1, h2, between), d);
}

/** The loss over the smooth spherical earth, eqs (22) to (36), dB; not above 0 where there is none. */
function sphericalDb(earth: SmoothEarth, d: number, h1: number, h2: number): number {
  const { perKm2, horizonFactor, nearFactor, own, lesser } = earth;
  const roots = Math.sqrt(h1) + Math.sqrt(h2);
  if (d >= horizonFactor * roots) return firstTermDb(own.xPerKm, own.perMetre, own.leastDb, d, h1, h2);
  const over = 1 / (h1 + h2);
  const b = nearestPoint((h1 - h2) * over, 0.5 * perKm2 * d * d * over);
  const y1 = 0.5 * d * (1 + b);
  const y2 = d - y1;
  const clearance = 0.5 * ((h1 - perKm2 * y1 * y1) * (1 - b) + (h2 - perKm2 * y2 * y2) * (1 + b));
  const needed = nearFactor * Math.sqrt(0.5 * y1 * (1 - b));
  const at = (d / roots) * perUnit;
  const entry = Math.trunc(at);
  const part = at - entry;
  const from = 3 * entry;
  const xPerKm = (1 - part) * (lesser[from] ?? 0) + part * (lesser[from + 3] ?? 0);
  const perMetre = (1 - part) * (lesser[from + 1] ?? 0) + part * (lesser[from + 4] ?? 0);
  const leastDb = (1 - part) * (lesser[from + 2] ?? 0) + part * (lesser[from + 5] ?? 0);
  return (1 - clearance / needed) * Math.max(0, firstTermDb(xPerKm, perMetre, leastDb, d, h1, h2));
}

/**
 * Eq (24c): where the smooth earth comes nearest to the line, between -1 and 1. The closed form with cosines solves `m b³ - (1 + m) b + c = 0`; Newton from
 * below reaches its root of least size in a few steps at a fraction of the cost.
 */
function nearestPoint(c: number, m: number): number {
  const linear = 1 + m;
  let b = c / linear;
  for (let round = 0; round < 6; round++) {
    const cubic = m * b * b;
    const step = ((cubic - linear) * b + c) / (3 * cubic - linear);
    b -= step;
    // The clearance is flat there, and the next step would be of the order of the square of this one.
    if (Math.abs(step) < 1e-3) break;
  }
  return Math.min(1, Math.max(-1, b));
}

/** `X^1.425` for eq (33), at steps of 1/1024 up to 1.6. */
const power = Float64Array.from({ length: Math.ceil(1.6 * 1024) + 2 }, (_, index) => (index / 1024) ** 1.425);

/** Eqs (33) to (36) over land. */
function firstTermDb(
  xPerKm: number,
  perMetre: number,
  leastDb: number,
  d: number,
  h1: number,
  h2: number,
): number {
  const x = xPerKm * d;
  let far: number;
  if (x >= 1.6) far = 11 + 0.5 * decibels20(x) - 17.6 * x;
  else {
    const at = x * 1024;
    const index = Math.trunc(at);
    const below = power[index] ?? 0;
    far = -decibels20(x) - 5.6488 * (below + (at - index) * ((power[index + 1] ?? 0) - below));
  }
  return -far - heightTermDb(perMetre * h1, leastDb) - heightTermDb(perMetre * h2, leastDb);
}

function heightTermDb(b: number, leastDb: number): number {
  const g =
    b > 2 ? 17.6 * Math.sqrt(b - 1.1) - 0.25 * decibels20(b - 1.1) - 8 : decibels20(b + 0.1 * b * b * b);
  return Math.max(g, leastDb);
}

/**
 * The edge parameter of Bullington over the smooth earth, eqs (37) to (39). Its profile is taken to have even steps between the first and
 * the last sample of the real one.
 */
function smoothEdge(
  { perKm2, perWave }: SmoothEarth,
  d: number,
  h1: number,
  h2: number,
  { firstKm, lastKm, samples }: SmoothSamples,
): number {
  const stepKm = samples > 1 ? (lastKm - firstKm) / (samples - 1) : firstKm;
  const line = (h2 - h1) / d;
  const steep = horizonSlope(perKm2, d, h1, firstKm, stepKm, samples);
  if (steep >= line) {
    const back = horizonSlope(perKm2, d, h2, d - lastKm, stepKm, samples);
    return Math.sqrt(Math.max(0, (steep - line) * (back + line) * d * perWave));
  }
  // In sight the sample that takes most of the Fresnel zone is one of the two around where the curve of v over t = sqrt(x / (D - x)),
  // C t / (1 + t²) - h1 / t - h2 t with C the bulge, is highest; Newton finds that from where it would be without bulge.
  const bulge = perKm2 * d * d;
  let t = Math.sqrt(h1 / h2);
  for (let round = 0; round < 5; round++) {
    const t2 = t * t;
    const q = 1 / (1 + t2);
    const perT2 = 1 / t2;
    const slope = bulge * (1 - t2) * q * q + h1 * perT2 - h2;
    if (Math.abs(slope) < 1e-2 * h2) break;
    const curve = 2 * t * (bulge * (t2 - 3) * q * q * q - h1 * perT2 * perT2);
    if (curve >= 0) break;
    // A step too far is halved on the scale of ratios.
    t = Math.min(Math.max(t - slope / curve, 0.5 * t), 2 * t);
  }
  const best = d - d / (1 + t * t);
  const low = firstKm + stepKm * Math.max(0, Math.min(samples - 1, Math.floor((best - firstKm) / stepKm)));
  const high = Math.min(low + stepKm, lastKm);
  const lowV = (perKm2 * low * (d - low) - h1 - line * low) / Math.sqrt(low * (d - low));
  const highV = (perKm2 * high * (d - high) - h1 - line * high) / Math.sqrt(high * (d - high));
  return Math.max(lowV, highV) * Math.sqrt(d * perWave);
}

/** Eqs (13) and (17) over the smooth earth: its horizon from h lies at sqrt(h a / 500), on one of the two samples around that. */
function horizonSlope(
  perKm2: number,
  d: number,
  h: number,
  nearKm: number,
  stepKm: number,
  samples: number,
): number {
  const best = Math.sqrt(h / perKm2);
  const low = nearKm + stepKm * Math.max(0, Math.min(samples - 1, Math.floor((best - nearKm) / stepKm)));
  const high = Math.min(low + stepKm, nearKm + stepKm * (samples - 1));
  return Math.max(perKm2 * (d - low) - h / low, perKm2 * (d - high) - h / high);
}
