/**
 * The order in which bundles of rays are walked: each from where it parts from its twin to where it parts in two itself, and at once all that
 * come of it. What was learnt of the ground before a parting serves both sides, so that ground near the station is crossed by few rays
 * and not by all of them.
 */
import { type Quadrant, type RayFrame, rayCount } from './rays.ts';

export interface Bundle {
  readonly quadrant: Quadrant;
  /** 0 for the finest; each level up is twice as wide. */
  readonly level: number;
  /** Slopes of its two edges; the same numbers that its neighbours have. */
  readonly lowSlope: number;
  readonly highSlope: number;
  /** Steps it is walked, up to, not including, `toStep`. */
  readonly fromStep: number;
  readonly toStep: number;
  /** Whether the cells in it are this share's to serve, or another's that has half of the bundle too. */
  readonly isOwn: boolean;
}

/**
 * For so many steps from the station bundles are narrower than they may be, as if they had begun so far behind it: what a low antenna has before its
 * feet counts as much as what those have whom it reaches.
 */
const narrowSteps = 64;

/**
 * Visits all bundles of which rays `fromRay` up to, not including, `toRay` come. `visit` says whether there is anything to be found beyond.
 */
export function visitBundles(
  frame: RayFrame,
  fromRay: number,
  toRay: number,
  visit: (bundle: Bundle) => boolean,
): void {
  for (const quadrant of frame.quadrants) {
    const { firstRay, rays, half, raysPerCell, lead, steps } = quadrant;
    const first = -rays / 2;
    const [from, to] = [
      Math.max(first, first + fromRay - firstRay),
      Math.min(-first, first + toRay - firstRay),
    ];
    if (from >= to) continue;
    const descend = (level: number, index: number, fromStep: number): void => {
      const width = 2 ** level;
      const low = index * width;
      if (low >= to || low + width <= from) return;
      // Half a bundle beyond the next parting it is as wide as a cell may be.
      const partsAt = half / raysPerCell / width;
      const parted = partsAt < narrowSteps ? 0 : Math.max(0, Math.floor(partsAt - lead) + 1);
      const toStep = level === 0 ? steps : Math.min(steps, parted);
      const isOwn = Math.max(low, first) >= from;
      const goesOn = visit({
        quadrant,
        level,
        lowSlope: low / half,
        highSlope: (low + width) / half,
        fromStep,
        toStep,
        isOwn,
      });
      if (!goesOn || level === 0 || toStep >= steps) return;
      // From the axis outwards: a share begins where its bundles are full of cells, and the code that runs over them is compiled for such.
      const nearer = index < 0 ? 1 : 0;
      descend(level - 1, 2 * index + nearer, toStep);
      descend(level - 1, 2 * index + 1 - nearer, toStep);
    };
    const top = levelsOf(quadrant);
    descend(top, -1, 0);
    descend(top, 0, 0);
  }
}

/** Level at which two bundles hold the whole quarter. */
function levelsOf({ rays }: Quadrant): number {
  return Math.ceil(Math.log2(rays / 2));
}

/** How many levels there are in the largest quarter. */
export function levelCount(frame: RayFrame): number {
  return rayCount(frame) === 0 ? 0 : 1 + Math.max(...frame.quadrants.map(levelsOf));
}
