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

/** Adds a point right of all others, and drops those it hides under a straight line. */
export function addToHull(hull: UpperHull, px: number, py: number): void {
  const { x, y } = hull;
  let size = hull.size;
  while (size >= 2) {
    const [x1, y1] = [x[size - 1] ?? 0, y[size - 1] ?? 0];
    const [x0, y0] = [x[size - 2] ?? 0, y[size - 2] ?? 0];
    if ((y1 - y0) * (px - x0) > (py - y0) * (x1 - x0)) break;
    size--;
  }
  x[size] = px;
  y[size] = py;
  hull.size = size + 1;
}

/** The point of the hull seen highest, looking back from a place right of it: greatest `(y - fromY) / (fromX - x)`. */
export function highestSeenBack(hull: UpperHull, fromX: number, fromY: number): number {
  const { x, y } = hull;
  let at = hull.size - 1;
  let best = ((y[at] ?? 0) - fromY) / (fromX - (x[at] ?? 0));
  while (at > 0) {
    const slope = ((y[at - 1] ?? 0) - fromY) / (fromX - (x[at - 1] ?? 0));
    // Along a convex hull the slope rises to the tangent and falls beyond it.
    if (slope < best) break;
    best = slope;
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
