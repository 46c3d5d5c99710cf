/**
 * Outlines of ground for the area rows: circles and great-circle borders as closed polygons of
 * [latitude, longitude] in degrees, and whether a point lies inside one. A sphere is exact enough here: the
 * borders are rules on a map, and nobody should plan within a kilometre of one.
 */
export type Point = readonly [latitudeDeg: number, longitudeDeg: number];

const degree = Math.PI / 180;
/** Mean radius of the Earth, km (IUGG). */
const earthKm = 6371.0088;

/** A circle about a point, drawn a little outside it so that no chord cuts into it. */
export function around(centre: Point, radiusKm: number, corners = 48): readonly Point[] {
  const [latitude, longitude] = [centre[0] * degree, centre[1] * degree];
  const reach = radiusKm / earthKm / Math.cos(Math.PI / corners);
  return Array.from({ length: corners }, (_, k): Point => {
    const bearing = (2 * Math.PI * k) / corners;
    const lat = Math.asin(
      Math.sin(latitude) * Math.cos(reach) + Math.cos(latitude) * Math.sin(reach) * Math.cos(bearing),
    );
    const lon =
      longitude +
      Math.atan2(
        Math.sin(bearing) * Math.sin(reach) * Math.cos(latitude),
        Math.cos(reach) - Math.sin(latitude) * Math.sin(lat),
      );
    return [lat / degree, lon / degree];
  });
}

/** Points along the great circle from one place to another, both ends with them. */
export function greatCircle(from: Point, to: Point, steps = 16): readonly Point[] {
  const a = onSphere(from);
  const b = onSphere(to);
  const angle = Math.acos(Math.min(1, a[0] * b[0] + a[1] * b[1] + a[2] * b[2]));
  if (angle === 0) return [from, to];
  return Array.from({ length: steps + 1 }, (_, k): Point => {
    const p = Math.sin((1 - k / steps) * angle) / Math.sin(angle);
    const q = Math.sin((k / steps) * angle) / Math.sin(angle);
    const [x, y, z] = [p * a[0] + q * b[0], p * a[1] + q * b[1], p * a[2] + q * b[2]];
    return [Math.atan2(z, Math.hypot(x, y)) / degree, Math.atan2(y, x) / degree];
  });
}

/**
 * Whether a point lies inside a closed polygon whose sides are straight in latitude and longitude (even-odd
 * rule). No outline here crosses the 180th meridian.
 */
export function contains(polygon: readonly Point[], [latitude, longitude]: Point): boolean {
  let inside = false;
  let previous = polygon.at(-1);
  for (const corner of polygon) {
    if (previous && corner[0] > latitude !== previous[0] > latitude) {
      const share = (latitude - corner[0]) / (previous[0] - corner[0]);
      if (longitude < corner[1] + share * (previous[1] - corner[1])) inside = !inside;
    }
    previous = corner;
  }
  return inside;
}

function onSphere([latitude, longitude]: Point): readonly [number, number, number] {
  const [lat, lon] = [latitude * degree, longitude * degree];
  return [Math.cos(lat) * Math.cos(lon), Math.cos(lat) * Math.sin(lon), Math.sin(lat)];
}
