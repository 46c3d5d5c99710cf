/**
 * Universal Transverse Mercator on WGS 84, both ways.
 *
 * Krüger's series in the third flattening n, as given by C. F. F. Karney, "Transverse Mercator with an
 * accuracy of a few nanometers", J. Geodesy 85 (2011), eqs (35) and (36), cut after n⁴: what is left out is
 * below a micrometre inside a zone. Zones as in NGA.SIG.0012 (2014), with the widened ones of Norway and
 * Svalbard.
 */
import type { Position } from './position.ts';

export interface UtmPoint {
  /** 1 … 60. */
  readonly zone: number;
  readonly north: boolean;
  /** Metres, 500 000 on the zone's central meridian. */
  readonly eastingM: number;
  /** Metres from the equator; 10 000 000 added in the southern hemisphere. */
  readonly northingM: number;
}

const equatorialRadiusM = 6_378_137;
const flattening = 1 / 298.257_223_563;
const n = flattening / (2 - flattening);
const eccentricity = Math.sqrt(flattening * (2 - flattening));
const scaleOnMeridian = 0.9996;
const rectifyingRadiusM = (equatorialRadiusM / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64);
const falseEastingM = 500_000;
const falseNorthingM = 10_000_000;

const alpha = [
  n / 2 - (2 / 3) * n ** 2 + (5 / 16) * n ** 3 + (41 / 180) * n ** 4,
  (13 / 48) * n ** 2 - (3 / 5) * n ** 3 + (557 / 1440) * n ** 4,
  (61 / 240) * n ** 3 - (103 / 140) * n ** 4,
  (49_561 / 161_280) * n ** 4,
];
const beta = [
  n / 2 - (2 / 3) * n ** 2 + (37 / 96) * n ** 3 - (1 / 360) * n ** 4,
  (1 / 48) * n ** 2 + (1 / 15) * n ** 3 - (437 / 1440) * n ** 4,
  (17 / 480) * n ** 3 - (37 / 840) * n ** 4,
  (4397 / 161_280) * n ** 4,
];

/** The zone a position belongs to; its own or, along the coast of Norway and in Svalbard, the widened neighbour. */
export function utmZone({ latitudeDeg, longitudeDeg }: Position): number {
  const zone = Math.min(Math.floor((longitudeDeg + 180) / 6) + 1, 60);
  if (latitudeDeg >= 56 && latitudeDeg < 64 && zone === 31 && longitudeDeg >= 3) return 32;
  if (latitudeDeg >= 72 && longitudeDeg >= 0 && longitudeDeg < 42) {
    return longitudeDeg < 9 ? 31 : longitudeDeg < 21 ? 33 : longitudeDeg < 33 ? 35 : 37;
  }
  return zone;
}

/** Position to grid, in the zone named (its own unless another is). */
export function toUtm(position: Position, zone: number = utmZone(position)): UtmPoint {
  const phi = radians(position.latitudeDeg);
  const lambda = radians(position.longitudeDeg - centralMeridianDeg(zone));
  const conformal = Math.sinh(
    Math.asinh(Math.tan(phi)) - eccentricity * Math.atanh(eccentricity * Math.sin(phi)),
  );
  const xiPrime = Math.atan2(conformal, Math.cos(lambda));
  const etaPrime = Math.asinh(Math.sin(lambda) / Math.hypot(conformal, Math.cos(lambda)));
  let xi = xiPrime;
  let eta = etaPrime;
  for (const [index, coefficient] of alpha.entries()) {
    const twice = 2 * (index + 1);
    xi += coefficient * Math.sin(twice * xiPrime) * Math.cosh(twice * etaPrime);
    eta += coefficient * Math.cos(twice * xiPrime) * Math.sinh(twice * etaPrime);
  }
  const north = position.latitudeDeg >= 0;
  const scale = scaleOnMeridian * rectifyingRadiusM;
  return {
    zone,
    north,
    eastingM: falseEastingM + scale * eta,
    northingM: scale * xi + (north ? 0 : falseNorthingM),
  };
}

/** Grid to position. */
export function fromUtm({ zone, north, eastingM, northingM }: UtmPoint): Position {
  const scale = scaleOnMeridian * rectifyingRadiusM;
  const xi = (northingM - (north ? 0 : falseNorthingM)) / scale;
  const eta = (eastingM - falseEastingM) / scale;
  let xiPrime = xi;
  let etaPrime = eta;
  for (const [index, coefficient] of beta.entries()) {
    const twice = 2 * (index + 1);
    xiPrime -= coefficient * Math.sin(twice * xi) * Math.cosh(twice * eta);
    etaPrime -= coefficient * Math.cos(twice * xi) * Math.sinh(twice * eta);
  }
  const conformal = Math.sin(xiPrime) / Math.hypot(Math.sinh(etaPrime), Math.cos(xiPrime));
  const lambda = Math.atan2(Math.sinh(etaPrime), Math.cos(xiPrime));
  return {
    latitudeDeg: degrees(geodeticLatitude(conformal)),
    longitudeDeg: degrees(lambda) + centralMeridianDeg(zone),
  };
}

/** Geodetic latitude from the tangent of the conformal one, by Newton's method (Karney 2011, eqs (19) to (21)). */
function geodeticLatitude(conformal: number): number {
  let tau = conformal;
  for (let round = 0; round < 8; round++) {
    const sigma = Math.sinh(eccentricity * Math.atanh((eccentricity * tau) / Math.hypot(1, tau)));
    const reached = tau * Math.hypot(1, sigma) - sigma * Math.hypot(1, tau);
    const step =
      ((conformal - reached) / Math.hypot(1, reached)) *
      ((1 + (1 - eccentricity ** 2) * tau ** 2) / ((1 - eccentricity ** 2) * Math.hypot(1, tau)));
    tau += step;
    if (Math.abs(step) < 1e-14 * Math.max(1, Math.abs(tau))) break;
  }
  return Math.atan(tau);
}

export function centralMeridianDeg(zone: number): number {
  return 6 * zone - 183;
}

function radians(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}

function degrees(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}
