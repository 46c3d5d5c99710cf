/**
 * The upper convex hull of a row of points that come in from left to right: the only points of the ground that can be somebody's horizon. Kept in
 * preallocated arrays, since a raster has thousands of rays.
 */
export interface UpperHull {
  readonly x: Float64Array;
  readonly y: Float64Array;
  size: number;
}

export function upperHull(capacity: number): UpperHull {
  return { x: new Float64Array(capacity), y: new Float64Array(capacity), size: 0 };
}

/** Empties a hull and takes over the points of another. */
export function copyHull(to: UpperHull, from: UpperHull): void {
  for (let at = 0; at < from.size; at++) {
    to.x[at] = from.x[at] ?? 0;
    to.y[at] = from.y[at] ?? 0;
  }
  to.size = from.size;
}

/** Adds a point right of all others, and drops those it hides under a straight line. */
export function addToHull(hull: UpperHull, px: number, py: number): void {
  const { x, y } = hull;
  let last = hull.size - 1;
  while (last >= 1) {
    const x1 = x[last] ?? 0;
    const y1 = y[last] ?? 0;
    const x0 = x[last - 1] ?? 0;
    const y0 = y[last - 1] ?? 0;
    if ((y1 - y0) * (px - x1) > (py - y1) * (x1 - x0)) break;
    last--;
  }
  x[last + 1] = px;
  y[last + 1] = py;
  hull.size = last + 2;
}

/** The point of the hull seen highest, looking back from a place right of it: greatest `(y - fromY) / (fromX - x)`. */
export function highestSeenBack(hull: UpperHull, fromX: number, fromY: number): number {
  const { x, y } = hull;
  let at = hull.size - 1;
  let rise = (y[at] ?? 0) - fromY;
  let run = fromX - (x[at] ?? 0);
  while (at > 0) {
    const nextRise = (y[at - 1] ?? 0) - fromY;
    const nextRun = fromX - (x[at - 1] ?? 0);
    // Along a convex hull the slope rises to the tangent and falls beyond it.
    if (nextRise * run < rise * nextRun) break;
    rise = nextRise;
    run = nextRun;
    at--;
  }
  return at;
}

/** The point of the hull farthest above lines of a slope, searched from a point known to lie right of it or on it. */
export function farthestAbove(hull: UpperHull, slope: number, from: number): number {
  const { x, y } = hull;
  let at = from;
  let best = (y[at] ?? 0) - slope * (x[at] ?? 0);
  while (at > 0) {
    const above = (y[at - 1] ?? 0) - slope * (x[at - 1] ?? 0);
    if (above < best) break;
    best = above;
    at--;
  }
  return at;
}
