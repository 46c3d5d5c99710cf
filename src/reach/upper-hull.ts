/**
 * The upper convex hull of a row of points that come in from left to right: the only points of the ground that can be somebody's horizon. Kept in
 * preallocated arrays, since a raster has thousands of rays; and what a call is about is left in {@link UpperHull.asked}, since a floating number
 * that goes from function to function may be put on the heap each time.
 */
export interface UpperHull {
  /** x and y in turn. */
  readonly points: Float64Array;
  /** What whoever added a point calls it. */
  readonly names: Int32Array;
  /** Two numbers: what the next call is about. */
  readonly asked: Float64Array;
  size: number;
}

export function upperHull(capacity: number): UpperHull {
  return {
    points: new Float64Array(2 * capacity),
    names: new Int32Array(capacity),
    asked: new Float64Array(2),
    size: 0,
  };
}

/** Empties a hull and takes over the points of another. */
export function copyHull(to: UpperHull, from: UpperHull): void {
  for (let at = 0; at < from.size; at++) {
    to.points[2 * at] = from.points[2 * at] ?? 0;
    to.points[2 * at + 1] = from.points[2 * at + 1] ?? 0;
    to.names[at] = from.names[at] ?? 0;
  }
  to.size = from.size;
}

/** Adds the point (x, y) that is asked, right of all others, and drops those it hides under a straight line. */
export function addToHull(hull: UpperHull, name: number): void {
  const { points, names, asked, size } = hull;
  const px = asked[0] ?? 0;
  const py = asked[1] ?? 0;
  let place = 2 * size;
  if (size > 1) {
    let x1 = points[place - 2] ?? 0;
    let y1 = points[place - 1] ?? 0;
    while (place >= 4) {
      const x0 = points[place - 4] ?? 0;
      const y0 = points[place - 3] ?? 0;
      if ((y1 - y0) * (px - x1) > (py - y1) * (x1 - x0)) break;
      place -= 2;
      x1 = x0;
      y1 = y0;
    }
  }
  points[place] = px;
  points[place + 1] = py;
  names[place >> 1] = name;
  hull.size = (place >> 1) + 1;
}

/**
 * The point of the hull seen highest, looking back from the place (x, y) that is asked, right of it: greatest `(point y - y) / (x - point x)`. Along a
 * convex hull that slope rises to the tangent and falls beyond it, so that the search may begin at any point, best at the one found for the place before.
 */
export function highestSeenBack({ points, asked, size }: UpperHull, begin: number): number {
  const fromX = asked[0] ?? 0;
  const fromY = asked[1] ?? 0;
  const last = 2 * (size - 1);
  let place = begin < size ? 2 * begin : last;
  let rise = (points[place + 1] ?? 0) - fromY;
  let run = fromX - (points[place] ?? 0);
  while (place < last) {
    const nextRise = (points[place + 3] ?? 0) - fromY;
    const nextRun = fromX - (points[place + 2] ?? 0);
    if (nextRise * run <= rise * nextRun) break;
    rise = nextRise;
    run = nextRun;
    place += 2;
  }
  while (place > 0) {
    const nextRise = (points[place - 1] ?? 0) - fromY;
    const nextRun = fromX - (points[place - 2] ?? 0);
    if (nextRise * run <= rise * nextRun) break;
    rise = nextRise;
    run = nextRun;
    place -= 2;
  }
  return place >> 1;
}

/**
 * The point of the hull farthest above lines of a slope, after each point is raised by so much for the square of its x: what is asked is the slope, and
 * that. The search may begin at any point.
 *
 * The raising undoes a fall that made the hull rounder than the ground: every point that stands farthest above a line stands on the
 * rounder hull as well. Between neighbours on it the search may stop at one that is as good but for the bulge between them.
 */
export function farthestAbove({ points, asked, size }: UpperHull, begin: number): number {
  const slope = asked[0] ?? 0;
  const raised = asked[1] ?? 0;
  const last = 2 * (size - 1);
  let place = begin < size ? 2 * begin : last;
  let x = points[place] ?? 0;
  let best = (points[place + 1] ?? 0) + (raised * x - slope) * x;
  while (place < last) {
    x = points[place + 2] ?? 0;
    const above = (points[place + 3] ?? 0) + (raised * x - slope) * x;
    if (above <= best) break;
    best = above;
    place += 2;
  }
  while (place > 0) {
    x = points[place - 2] ?? 0;
    const above = (points[place - 1] ?? 0) + (raised * x - slope) * x;
    if (above <= best) break;
    best = above;
    place -= 2;
  }
  return place >> 1;
}
