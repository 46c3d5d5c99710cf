/**
 * Distances, bearings and points along geodesics on the WGS 84 ellipsoid, by C. F. F. Karney's algorithm ("Algorithms for
 * geodesics", J. Geodesy 87, 2013), accurate to nanometres.
 *
 * The library is loaded on first use, since checking a plan without paths needs none of it.
 */
import type { Position } from './position.ts';

export interface Line {
  readonly distanceM: number;
  /** True bearing at the start, 0 … 360, clockwise from north. */
  readonly bearingDeg: number;
  /** True bearing of the same line as it arrives. The way back leaves the far end at this plus 180. */
  readonly finalBearingDeg: number;
}

export interface Geodesy {
  line(from: Position, to: Position): Line;
  /** The place so far away on a bearing. */
  destination(from: Position, bearingDeg: number, distanceM: number): Position;
  /** Points on the shortest line, at these shares of it (0 is `from`, 1 is `to`). */
  along(from: Position, to: Position, shares: readonly number[]): readonly Position[];
}

/** Loads the library and hands back plain functions. */
export async function loadGeodesy(): Promise<Geodesy> {
  const library = await import('geographiclib-geodesic');
  const wgs84 = library.default.Geodesic.WGS84;
  return {
    line(from, to) {
      const {
        s12 = 0,
        azi1 = 0,
        azi2 = 0,
      } = wgs84.Inverse(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
      return { distanceM: s12, bearingDeg: compass(azi1), finalBearingDeg: compass(azi2) };
    },
    destination(from, bearingDeg, distanceM) {
      const { lat2, lon2 } = wgs84.Direct(from.latitudeDeg, from.longitudeDeg, bearingDeg, distanceM);
      return { latitudeDeg: lat2 ?? from.latitudeDeg, longitudeDeg: lon2 ?? from.longitudeDeg };
    },
    along(from, to, shares) {
      const line = wgs84.InverseLine(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
      return shares.map((share) => {
        if (share === 0) return from;
        if (share === 1) return to;
        const { lat2, lon2 } = line.Position(share * line.s13);
        return { latitudeDeg: lat2 ?? from.latitudeDeg, longitudeDeg: lon2 ?? from.longitudeDeg };
      });
    },
  };
}

/** An angle as a compass shows it, 0 (inclusive) to 360 (exclusive). */
export function compass(angleDeg: number): number {
  const turned = angleDeg % 360;
  return turned < 0 ? turned + 360 : turned + 0;
}
