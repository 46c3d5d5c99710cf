import type { AreaRow } from './country.ts';
import { contains } from './ground.ts';
import type { Law } from './law.ts';
import { nearby } from './nearby.ts';
import { holds } from './span.ts';

/** The places with rules of their own that a point lies in, for a frequency. Latitude and longitude in degrees, WGS84. */
export function areasAt(
  law: Law,
  latitudeDeg: number,
  longitudeDeg: number,
  frequencyHz: number,
): readonly AreaRow[] {
  return nearby(law.country.areas, frequencyHz).filter(
    (row) => holds(row, frequencyHz) && contains(row.polygon, [latitudeDeg, longitudeDeg]),
  );
}
