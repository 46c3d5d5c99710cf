/**
 * Rays from a station over an elevation grid, so that every cell of the grid lies between two of them that are at most a cell apart. A ray
 * meets the cells beside it in order of distance: what is learnt of the ground on the way out serves every cell behind.
 *
 * A ray steps along the axis it is steeper to, one row or column at a time. In latitude and longitude a geodesic is bent; its
 * bend is followed to second order, which is off by 3 m at 50 km and 24 m at 100 km, less than a third of the usual cell.
 */
import { type ElevationGrid, heightAt } from './grid.ts';

/** The station on its grid, and how its surroundings are measured. */
export interface RayFrame {
  readonly columns: number;
  readonly rows: number;
  /** Where the station stands, in cells from the north-west sample, with fractions. */
  readonly row: number;
  readonly column: number;
  /** Ground under it, m; stated, or that of the grid. */
  readonly groundM: number;
  /** Metres from one column or row to the next, at the station. */
  readonly eastM: number;
  readonly northM: number;
  /** Tangent of the station's latitude over the radius of the earth, per metre: how fast meridians close in. */
  readonly closingPerM: number;
  /** How far rays go, m. */
  readonly rangeM: number;
  readonly quadrants: readonly Quadrant[];
}

/** A quarter of the surroundings: all rays that step the same way. */
interface Quadrant {
  readonly firstRay: number;
  /** Rays on each side of the axis; the slope of ray i is i over this. */
  readonly half: number;
  /** Whether it steps along columns (east or west) or along rows. */
  readonly isAlongColumns: boolean;
  readonly sign: 1 | -1;
}

/** One ray, ready to be walked. Step m stands on the line `majorStart + sign * m`, m = 0, 1 … */
export interface Ray {
  readonly isAlongColumns: boolean;
  readonly sign: 1 | -1;
  readonly index: number;
  readonly half: number;
  /** Row or column of step 0, and the station's distance before it in cells (at least a half). */
  readonly majorStart: number;
  readonly lead: number;
  readonly steps: number;
  /** Minor coordinate at t cells from the station: `minor + slope t + bend t²`. */
  readonly minor: number;
  readonly slope: number;
  readonly bend: number;
  /** Distance at t cells, km: `first t + second t²`. */
  readonly firstKm: number;
  readonly secondKm: number;
}

const equatorialRadiusM = 6_378_137;
const eccentricity2 = 0.006_694_379_990_14;
const meanRadiusM = 6_371_009;

export interface RayOptions {
  /** Ground under the station; that of the grid unless a plan states it. */
  readonly elevationM?: number;
  /** How far rays go, m; to the edges of the grid unless given. */
  readonly rangeM?: number;
  /**
   * Rays to each cell of the grid's outermost ring, a whole number. More follow the ground between more closely, and take longer: 6 unless
   * given, which the steep hills of a three-second grid need; 1 does where cells are small against the relief.
   */
  readonly raysPerCell?: number;
}

/** Places the station. `undefined` where the grid has no ground under it. */
export function rayFrame(
  grid: ElevationGrid,
  station: { readonly latitudeDeg: number; readonly longitudeDeg: number },
  options: RayOptions = {},
): RayFrame | undefined {
  const groundM = options.elevationM ?? heightAt(grid, station);
  const row = (grid.northDeg - station.latitudeDeg) / grid.stepNorthDeg;
  const column = (station.longitudeDeg - grid.westDeg) / grid.stepEastDeg;
  const { columns, rows } = grid;
  if (groundM === undefined || row < 0 || column < 0 || row > rows - 1 || column > columns - 1)
    return undefined;

  const phi = (station.latitudeDeg * Math.PI) / 180;
  const w2 = 1 - eccentricity2 * Math.sin(phi) ** 2;
  const normalM = equatorialRadiusM / Math.sqrt(w2);
  const meridianM = (equatorialRadiusM * (1 - eccentricity2)) / (w2 * Math.sqrt(w2));
  const perDegree = Math.PI / 180;
  const extents = [columns - 1 - column, column, rows - 1 - row, row] as const;
  const raysPerCell = options.raysPerCell ?? 6;
  let firstRay = 0;
  const quadrants = extents.map((extent, quarter): Quadrant => {
    const half = Math.max(1, Math.ceil(extent)) * raysPerCell;
    const quadrant = {
      firstRay,
      half,
      isAlongColumns: quarter < 2,
      sign: quarter % 2 === 0 ? 1 : -1,
    } as const;
    firstRay += 2 * (half + slack(half)) + 1;
    return quadrant;
  });
  return {
    columns,
    rows,
    row,
    column,
    groundM,
    quadrants,
    eastM: normalM * Math.cos(phi) * grid.stepEastDeg * perDegree,
    northM: meridianM * grid.stepNorthDeg * perDegree,
    closingPerM: Math.tan(phi) / meanRadiusM,
    rangeM: options.rangeM ?? Number.POSITIVE_INFINITY,
  };
}

/** How many rays there are; a band is a stretch of their numbers from 0. */
export function rayCount(frame: RayFrame): number {
  const last = frame.quadrants.at(-1);
  return last ? last.firstRay + 2 * (last.half + slack(last.half)) + 1 : 0;
}

/** Rays beyond the diagonal that its bend can make the nearest to a cell of the quarter. */
function slack(half: number): number {
  return 2 + Math.ceil(half / 50);
}

/** The ray of a number. */
export function rayOf(frame: RayFrame, number: number): Ray | undefined {
  const quadrant = frame.quadrants.findLast(({ firstRay }) => firstRay <= number);
  if (!quadrant) return undefined;
  const { half, isAlongColumns, sign } = quadrant;
  const index = number - quadrant.firstRay - half - slack(half);
  const station = isAlongColumns ? frame.column : frame.row;
  const count = isAlongColumns ? frame.columns : frame.rows;
  // The first sample is at least half a cell away: nearer ones would read as cliffs before a low antenna.
  const majorStart = sign > 0 ? Math.ceil(station + 0.5) : Math.floor(station - 0.5);
  const slope = index / half;
  const majorM = isAlongColumns ? frame.eastM : frame.northM;
  const minorM = isAlongColumns ? frame.northM : frame.eastM;
  // Tangent of the angle off the axis, on the ground: north for the columns' quarters, east for the rows'.
  const tangent = (slope * minorM) / majorM;
  const closing = frame.closingPerM;
  const bend = bendOf(frame, isAlongColumns, sign, slope);
  const stretch = Math.hypot(1, tangent);
  const secondM = isAlongColumns
    ? tangent * closing * majorM ** 2 // the row counts southwards: a ray to the south finds the meridians wider
    : 0.5 * -sign * closing * tangent ** 2 * majorM ** 2;
  const firstKm = (majorM * stretch) / 1000;
  const inGrid = sign > 0 ? count - majorStart : majorStart + 1;
  const inRange = Math.ceil(frame.rangeM / (firstKm * 1000));
  return {
    isAlongColumns,
    sign,
    index,
    half,
    majorStart,
    lead: Math.abs(majorStart - station),
    steps: Math.max(0, Math.min(inGrid, inRange)),
    minor: isAlongColumns ? frame.row : frame.column,
    slope,
    bend,
    firstKm,
    secondKm: (secondM * stretch) / 1000,
  };
}

/**
 * Second-order bend of a ray, cells of the minor axis per square cell of the major, from the expansion of a great circle on a sphere about the station
 * (eastward: the latitude falls by `(tau² + 1/2) tan(phi) E² / R²`; northward: the longitude grows by `sigma (1 + sigma²/2) tan(phi) N² / R²`).
 */
function bendOf(frame: RayFrame, isAlongColumns: boolean, sign: 1 | -1, slope: number): number {
  const { eastM, northM, closingPerM } = frame;
  if (isAlongColumns) {
    const tangent = (slope * northM) / eastM;
    return ((tangent * tangent + 0.5) * closingPerM * eastM * eastM) / northM;
  }
  const tangent = (slope * eastM) / northM;
  return -sign * slope * (1 + 0.5 * tangent * tangent) * closingPerM * northM;
}

/** Where among the rays of its quarter a cell lies, at so many cells along both axes from the station: 2.25 is a quarter of the way from ray 2 to ray 3. */
export function placeAmongRays(frame: RayFrame, ray: Ray, major: number, minor: number): number {
  const rough = minor / major;
  const slope = rough - bendOf(frame, ray.isAlongColumns, ray.sign, rough) * major;
  return (rough - bendOf(frame, ray.isAlongColumns, ray.sign, slope) * major) * ray.half;
}
