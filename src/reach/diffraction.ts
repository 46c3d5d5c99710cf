/**
 * Diffraction loss over real ground by the delta-Bullington method: the Bullington construction over the actual profile, put right by
 * the difference between a smooth spherical earth and Bullington over that smooth earth.
 *
 * Sources: Recommendation ITU-R P.526-16 (11/2025) §4.5.1 and §4.5.2; the same method, whose equation numbers stand below, in P.1812-8
 * (09/2025) §4.3.1 to §4.3.4, smooth surface in its Attachment 1 §5.6. Meant for 30 MHz to 50 GHz. Median; no loss at the antennas
 * themselves, no margin for time or place. Antennas are meant to be a metre or more above ground.
 */
import { medianEarthRadiusKm } from './earth.ts';
import { speedOfLight } from './free-space.ts';
import { knifeEdgeLossDb } from './knife-edge.ts';
import { type DiffractionForm, type Polarization, sphericalEarthLossDb } from './spherical-earth.ts';

export interface DiffractionPath {
  /** From the first antenna, km, beginning with 0, strictly rising; at least three. */
  readonly distancesKm: ArrayLike<number>;
  /** Bare ground above sea level, m, at each distance. */
  readonly heightsM: ArrayLike<number>;
  /** Height of cover on top of the ground, m, at each distance; the first and last are not used. */
  readonly coverM?: ArrayLike<number>;
  /** Antenna heights above ground at the two ends, m. */
  readonly startAntennaM: number;
  readonly endAntennaM: number;
  readonly frequencyHz: number;
  readonly polarization: Polarization;
  /** Default {@link medianEarthRadiusKm}. */
  readonly earthRadiusKm?: number;
  /** Default 0. */
  readonly seaShare?: number;
  /** Default `p1812`. */
  readonly form?: DiffractionForm;
  /** Only to reproduce published answers that were computed with a rounded speed of light. */
  readonly wavelengthM?: number;
}

export interface DiffractionLoss {
  /** Ld: the whole diffraction loss, eq (39), dB. */
  readonly lossDb: number;
  /** La: Bullington over the actual ground, dB. */
  readonly bullingtonDb: number;
  /** Ls: Bullington over the smooth surface, dB. */
  readonly smoothBullingtonDb: number;
  /** Lp: spherical earth, dB. */
  readonly sphericalDb: number;
  /** Heights of the smooth surface at the two ends, m above sea level. */
  readonly smoothStartM: number;
  readonly smoothEndM: number;
}

export function diffractionLoss(path: DiffractionPath): DiffractionLoss {
  const { distancesKm: x, heightsM: h, coverM } = path;
  const last = x.length - 1;
  const a = path.earthRadiusKm ?? medianEarthRadiusKm;
  const lambda = path.wavelengthM ?? speedOfLight / path.frequencyHz;
  const top = new Float64Array(x.length);
  for (let i = 0; i <= last; i++) top[i] = (h[i] ?? 0) + (i > 0 && i < last ? (coverM?.[i] ?? 0) : 0);
  const startM = (h[0] ?? 0) + path.startAntennaM;
  const endM = (h[last] ?? 0) + path.endAntennaM;

  const bullingtonDb = bullingtonLossDb(x, top, startM, endM, a, lambda);
  const smooth = smoothSurface(x, h, startM, endM);
  const smoothStartAntennaM = startM - smooth.startM;
  const smoothEndAntennaM = endM - smooth.endM;
  const smoothBullingtonDb = bullingtonLossDb(
    x,
    new Float64Array(x.length),
    smoothStartAntennaM,
    smoothEndAntennaM,
    a,
    lambda,
  );
  const sphericalDb = sphericalEarthLossDb({
    distanceKm: x[last] ?? 0,
    startM: smoothStartAntennaM,
    endM: smoothEndAntennaM,
    frequencyMhz: path.frequencyHz / 1e6,
    wavelengthM: lambda,
    polarization: path.polarization,
    earthRadiusKm: a,
    seaShare: path.seaShare ?? 0,
    form: path.form ?? 'p1812',
  });
  return {
    lossDb: bullingtonDb + Math.max(sphericalDb - smoothBullingtonDb, 0),
    bullingtonDb,
    smoothBullingtonDb,
    sphericalDb,
    smoothStartM: smooth.startM,
    smoothEndM: smooth.endM,
  };
}

/** Eqs (13) to (21). */
function bullingtonLossDb(
  x: ArrayLike<number>,
  top: ArrayLike<number>,
  startM: number,
  endM: number,
  a: number,
  lambda: number,
): number {
  const last = x.length - 1;
  const d = x[last] ?? 0;
  let slopeFromStart = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < last; i++) {
    const xi = x[i] ?? 0;
    slopeFromStart = Math.max(slopeFromStart, ((top[i] ?? 0) + (500 * xi * (d - xi)) / a - startM) / xi); // (13)
  }
  const slopeOfLine = (endM - startM) / d; // (14)
  let v = Number.NEGATIVE_INFINITY;
  if (slopeFromStart < slopeOfLine) {
    for (let i = 1; i < last; i++) {
      const xi = x[i] ?? 0;
      const above = (top[i] ?? 0) + (500 * xi * (d - xi)) / a - (startM * (d - xi) + endM * xi) / d;
      v = Math.max(v, above * Math.sqrt((0.002 * d) / (lambda * xi * (d - xi)))); // (15)
    }
  } else {
    let slopeFromEnd = Number.NEGATIVE_INFINITY;
    for (let i = 1; i < last; i++) {
      const xi = x[i] ?? 0;
      slopeFromEnd = Math.max(slopeFromEnd, ((top[i] ?? 0) + (500 * xi * (d - xi)) / a - endM) / (d - xi)); // (17)
    }
    const xb = (endM - startM + slopeFromEnd * d) / (slopeFromStart + slopeFromEnd); // (18)
    v =
      (startM + slopeFromStart * xb - (startM * (d - xb) + endM * xb) / d) *
      Math.sqrt((0.002 * d) / (lambda * xb * (d - xb))); // (19)
  }
  const knifeEdgeDb = knifeEdgeLossDb(v);
  return knifeEdgeDb + (1 - Math.exp(-knifeEdgeDb / 6)) * (10 + 0.02 * d); // (21)
}

/** A straight line laid through the bare ground, lowered where ground stands above the line of sight; P.1812-8 Attachment 1 §5.6.1 and §5.6.2. */
function smoothSurface(
  x: ArrayLike<number>,
  h: ArrayLike<number>,
  startAntennaM: number,
  endAntennaM: number,
): { readonly startM: number; readonly endM: number } {
  const last = x.length - 1;
  const d = x[last] ?? 0;
  let sum = 0;
  let moment = 0;
  for (let i = 1; i <= last; i++) {
    const [x0, x1, h0, h1] = [x[i - 1] ?? 0, x[i] ?? 0, h[i - 1] ?? 0, h[i] ?? 0];
    sum += (x1 - x0) * (h1 + h0);
    moment += (x1 - x0) * (h1 * (2 * x1 + x0) + h0 * (x1 + 2 * x0));
  }
  let startM = (2 * sum * d - moment) / (d * d);
  let endM = (moment - sum * d) / (d * d);

  let highest = Number.NEGATIVE_INFINITY;
  let fromStart = Number.NEGATIVE_INFINITY;
  let fromEnd = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < last; i++) {
    const xi = x[i] ?? 0;
    const above = (h[i] ?? 0) - (startAntennaM * (d - xi) + endAntennaM * xi) / d;
    highest = Math.max(highest, above);
    fromStart = Math.max(fromStart, above / xi);
    fromEnd = Math.max(fromEnd, above / (d - xi));
  }
  if (highest > 0) {
    startM -= (highest * fromStart) / (fromStart + fromEnd);
    endM -= (highest * fromEnd) / (fromStart + fromEnd);
  }
  return { startM: Math.min(startM, h[0] ?? 0), endM: Math.min(endM, h[last] ?? 0) };
}
