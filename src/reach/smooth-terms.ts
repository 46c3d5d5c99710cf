/**
 * The smooth-earth part of the delta-Bullington loss, `max(Lp - Ls, 0)`, for rasters: the same equations as in {@link ./spherical-earth.ts} and
 * {@link ./diffraction.ts}, with everything that depends on frequency alone worked out once, and the Bullington profile over the
 * smooth earth found without walking it.
 *
 * Source: Recommendation ITU-R P.1812-8 §4.3.1 to §4.3.4, eqs (22) to (39), over land.
 */
import { bullingtonOfEdgeDb } from './bullington-table.ts';
import type { Polarization } from './spherical-earth.ts';

export interface SmoothConstants {
  readonly wavelengthM: number;
  readonly earthRadiusKm: number;
  readonly horizonFactor: number;
  readonly nearFactor: number;
  /** K of eq (29) times the cube root of the radius. */
  readonly k: number;
  readonly f13: number;
  readonly f23: number;
}

const land = { permittivity: 22, conductivity: 0.003 };

export function smoothConstants(
  frequencyHz: number,
  wavelengthM: number,
  polarization: Polarization,
  earthRadiusKm: number,
): SmoothConstants {
  const f = frequencyHz / 1e6;
  const imaginary = (18_000 * land.conductivity) / f;
  const horizontal = 0.36 * f ** (-1 / 3) * ((land.permittivity - 1) ** 2 + imaginary ** 2) ** -0.25;
  return {
    wavelengthM,
    earthRadiusKm,
    horizonFactor: Math.sqrt(2 * earthRadiusKm) / Math.sqrt(1000),
    nearFactor: 17.456 * Math.sqrt(wavelengthM),
    k: polarization === 'horizontal' ? horizontal : horizontal * Math.hypot(land.permittivity, imaginary),
    f13: Math.cbrt(f),
    f23: Math.cbrt(f) ** 2,
  };
}

/**
 * @param h1 height of the first antenna above the smooth surface, m; `h2` that of the second.
 * @param firstKm distance of the first sample from the first antenna, and `stepKm` between samples: the profile the smooth
 * Bullington part would be walked over.
 */
export function smoothExtraDb(
  constants: SmoothConstants,
  d: number,
  h1: number,
  h2: number,
  firstKm: number,
  stepKm: number,
  samples: number,
): number {
  const a = constants.earthRadiusKm;
  const root1 = Math.sqrt(h1);
  const root2 = Math.sqrt(h2);
  let spherical: number;
  if (d >= constants.horizonFactor * (root1 + root2)) {
    spherical = firstTermDb(constants, a, d, h1, h2);
  } else {
    const sum = h1 + h2;
    const c = (h1 - h2) / sum;
    const m = (250 * d * d) / (a * sum);
    const b = nearestPoint(c, m);
    const y1 = (d * (1 + b)) / 2;
    const y2 = d - y1;
    const clearance = ((h1 - (500 * y1 * y1) / a) * y2 + (h2 - (500 * y2 * y2) / a) * y1) / d;
    const needed = constants.nearFactor * Math.sqrt((y1 * y2) / d);
    if (clearance > needed) return 0;
    const grazing = 500 * (d / (root1 + root2)) ** 2;
    spherical = (1 - clearance / needed) * Math.max(0, firstTermDb(constants, grazing, d, h1, h2));
  }
  if (spherical <= 0) return 0;
  return Math.max(0, spherical - smoothBullingtonDb(constants, d, h1, h2, firstKm, stepKm, samples));
}

/**
 * Eq (24c): where the smooth earth comes nearest to the line, between -1 and 1. The closed form with cosines solves `m b³ - (1 + m) b + c = 0`; Newton from
 * below reaches its root of least size in a few steps at a fraction of the cost.
 */
function nearestPoint(c: number, m: number): number {
  let b = c / (1 + m);
  for (let round = 0; round < 6; round++) {
    const step = (m * b * b * b - (1 + m) * b + c) / (3 * m * b * b - (1 + m));
    b -= step;
    if (Math.abs(step) < 1e-9) break;
  }
  return Math.min(1, Math.max(-1, b));
}

/** Eqs (29) to (36) over land. */
function firstTermDb(
  constants: SmoothConstants,
  radiusKm: number,
  d: number,
  h1: number,
  h2: number,
): number {
  const a13 = Math.cbrt(radiusKm);
  const k = constants.k / a13;
  const k2 = k * k;
  const k4 = k2 * k2;
  const beta = (1 + 1.6 * k2 + 0.67 * k4) / (1 + 4.5 * k2 + 1.53 * k4);
  const x = (2.188 * beta * constants.f13 * d) / (a13 * a13);
  const perMetre = (0.009575 * beta * beta * constants.f23) / a13;
  const least = 2 + decibels20 * Math.log(k);
  const lnX = Math.log(x);
  const far =
    x >= 1.6 ? 11 + 0.5 * decibels20 * lnX - 17.6 * x : -decibels20 * lnX - 5.6488 * Math.exp(1.425 * lnX);
  return -far - heightTermDb(perMetre * h1, least) - heightTermDb(perMetre * h2, least);
}

const decibels20 = 20 / Math.LN10;

function heightTermDb(b: number, least: number): number {
  const g =
    b > 2
      ? 17.6 * Math.sqrt(b - 1.1) - 0.25 * decibels20 * Math.log(b - 1.1) - 8
      : decibels20 * Math.log(b + 0.1 * b * b * b);
  return Math.max(g, least);
}

/** Ls: Bullington over a profile of zeros. */
function smoothBullingtonDb(
  constants: SmoothConstants,
  d: number,
  h1: number,
  h2: number,
  firstKm: number,
  stepKm: number,
  samples: number,
): number {
  const perKm = 500 / constants.earthRadiusKm;
  const scale = (0.002 * d) / constants.wavelengthM;
  const lastKm = firstKm + stepKm * (samples - 1);
  const line = (h2 - h1) / d;
  const fromStart = horizonSlope(perKm, d, h1, firstKm, stepKm, samples, lastKm);
  if (fromStart >= line) {
    const fromEnd = horizonSlope(perKm, d, h2, d - lastKm, stepKm, samples, d - firstKm);
    return bullingtonOfEdgeDb(Math.sqrt(Math.max(0, (fromStart - line) * (fromEnd + line) * scale)), d);
  }
  // In sight: the sample that takes most of the Fresnel zone, one of the two around where the curve of v over t = sqrt(x / (D - x)), C t / (1 + t²) - h1 / t
  // - h2 t with C the bulge, is highest; Newton finds that from where it would be without bulge.
  const bulge = perKm * d * d;
  let t = Math.sqrt(h1 / h2);
  for (let round = 0; round < 5; round++) {
    const t2 = t * t;
    const q = 1 / (1 + t2);
    const slope = bulge * (1 - t2) * q * q + h1 / t2 - h2;
    const curve = 2 * bulge * t * (t2 - 3) * q * q * q - (2 * h1) / (t2 * t);
    if (curve >= 0) break;
    const next = t - slope / curve;
    // A step too far is halved on the scale of ratios.
    t = Math.min(Math.max(next, 0.5 * t), 2 * t);
    if (Math.abs(slope) < 1e-6 * h2) break;
  }
  const best = (d * t * t) / (1 + t * t);
  const low = firstKm + stepKm * Math.max(0, Math.min(samples - 1, Math.floor((best - firstKm) / stepKm)));
  const high = Math.min(low + stepKm, lastKm);
  const most = Math.max(
    (perKm * low * (d - low) - h1 - line * low) / Math.sqrt(low * (d - low)),
    (perKm * high * (d - high) - h1 - line * high) / Math.sqrt(high * (d - high)),
  );
  return bullingtonOfEdgeDb(most * Math.sqrt(scale), d);
}

/** Eqs (13) and (17) over the smooth earth: its horizon from h lies at sqrt(h a / 500), on one of the two samples around that. */
function horizonSlope(
  perKm: number,
  d: number,
  h: number,
  nearKm: number,
  stepKm: number,
  samples: number,
  farKm: number,
): number {
  const best = Math.sqrt(h / perKm);
  const low = nearKm + stepKm * Math.max(0, Math.min(samples - 1, Math.floor((best - nearKm) / stepKm)));
  const high = Math.min(low + stepKm, farKm);
  return Math.max(perKm * (d - low) - h / low, perKm * (d - high) - h / high);
}
