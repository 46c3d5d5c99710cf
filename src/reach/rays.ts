/**
 * Directions from a station over an elevation grid, in bundles that split in two wherever they have grown as wide as a cell: every cell of the
 * grid lies in one bundle, and the ground along its middle stands for the bundle.
 *
 * A bundle steps along the axis it is steeper to, one row or column at a time. In latitude and longitude a geodesic is bent; its
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
  /** How far rays go, m. */
  readonly rangeM: number;
  readonly quadrants: readonly Quadrant[];
}

/** A quarter of the surroundings: all bundles that step the same way. */
export interface Quadrant {
  /** Number of the first of its finest bundles, and how many they are. */
  readonly firstRay: number;
  readonly rays: number;
  /** The edges of the finest bundles have the slopes i / half, with 0 along the axis. */
  readonly half: number;
  /** Bundles at the edge of the grid are at most a cell over this wide. */
  readonly raysPerCell: number;
  /** Whether it steps along columns (east or west) or along rows. */
  readonly isAlongColumns: boolean;
  readonly sign: 1 | -1;
  /** Step m stands on the row or column `majorStart + sign m`, m = 0, 1 …, which is `lead + m` cells from the station (at least a half). */
  readonly majorStart: number;
  readonly lead: number;
  readonly steps: number;
  /** Metres from one column or row to the next along the major axis, and along the minor. */
  readonly majorM: number;
  readonly minorM: number;
  /**
   * How rays bend, cells of the minor axis per square cell of the major: the part that is alike to both sides of the axis, and the part that is
   * opposite. See {@link rayOf}.
   */
  readonly evenBend: number;
  readonly oddBend: number;
  /** Of the minor axis: where the station stands, and the last row or column. */
  readonly station: number;
  readonly last: number;
  /** From one sample of the grid to the next, in the order of the grid, along either axis; signs are those of the steps. */
  readonly majorStride: number;
  readonly minorStride: number;
  /** Number of the sample on which step 0 stands, at 0 of the minor axis. */
  readonly firstNumber: number;
}

/** One direction: its minor coordinate at t cells from the station is `minor + (slope + bend t) t`, its distance `(firstKm + secondKm t) t`. */
export interface Ray {
  readonly slope: number;
  readonly bend: number;
  readonly firstKm: number;
  readonly secondKm: number;
  /** A cell aside, km, and its part along the ray: so many cells aside the square of the distance is `d² + 2 d alongKm a + (asideKm a)²`. */
  readonly asideKm: number;
  readonly alongKm: number;
}

const equatorialRadiusM = 6_378_137;
const eccentricity2 = 0.006_694_379_990_14;
const meanRadiusM = 6_371_009;

/**
 * Wide enough to be quick, and narrow enough that in hills 99 of 100 cells are within 0.5 dB of the profile that leads straight to them, though the
 * ground is carried across to the cell only at its horizons and next to it.
 */
const usualWidthM = 9;

export interface RayOptions {
  /** Ground under the station; that of the grid unless a plan states it. */
  readonly elevationM?: number;
  /** How far rays go, m; to the edges of the grid unless given. */
  readonly rangeM?: number;
  /**
   * Bundles to each cell of the grid's outermost ring; below 1 they are wider than a cell. More follow the ground between its samples more closely, and take longer.
   * Unless given, as many as leave them no more than {@link usualWidthM} wide: 11 on a three-second grid, 4 on a one-second one.
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
  // How fast meridians close in.
  const closingPerM = Math.tan(phi) / meanRadiusM;
  const rangeM = options.rangeM ?? Number.POSITIVE_INFINITY;
  const eastM = normalM * Math.cos(phi) * grid.stepEastDeg * perDegree;
  const northM = meridianM * grid.stepNorthDeg * perDegree;
  const raysPerCell = options.raysPerCell ?? Math.max(1, Math.ceil(Math.max(eastM, northM) / usualWidthM));
  let firstRay = 0;
  const quadrants = ([0, 1, 2, 3] as const).map((quarter): Quadrant => {
    const isAlongColumns = quarter < 2;
    const sign = quarter % 2 === 0 ? 1 : -1;
    const from = isAlongColumns ? column : row;
    const count = isAlongColumns ? columns : rows;
    const extent = Math.max(1, Math.ceil(sign > 0 ? count - 1 - from : from));
    const half = Math.ceil(extent * raysPerCell);
    // The first sample is at least half a cell away: nearer ones would read as cliffs before a low antenna.
    const majorStart = sign > 0 ? Math.ceil(from + 0.5) : Math.floor(from - 0.5);
    const inGrid = sign > 0 ? count - majorStart : majorStart + 1;
    const inRange = Math.ceil(rangeM / (isAlongColumns ? eastM : northM));
    const rays = 2 * (half + slack(half));
    const [majorM, minorM] = isAlongColumns ? [eastM, northM] : [northM, eastM];
    const bend = (closingPerM * majorM * majorM) / minorM;
    const quadrant = {
      firstRay,
      rays,
      half,
      raysPerCell,
      isAlongColumns,
      sign,
      majorStart,
      lead: Math.abs(majorStart - from),
      steps: Math.max(0, Math.min(inGrid, inRange)),
      majorM,
      minorM,
      evenBend: isAlongColumns ? bend : 0,
      oddBend: isAlongColumns ? 0 : -sign * bend,
      station: isAlongColumns ? row : column,
      last: (isAlongColumns ? rows : columns) - 1,
      majorStride: isAlongColumns ? sign : sign * columns,
      minorStride: isAlongColumns ? columns : 1,
      firstNumber: majorStart * (isAlongColumns ? 1 : columns),
    } as const;
    firstRay += rays;
    return quadrant;
  });
  return {
    columns,
    rows,
    row,
    column,
    groundM,
    quadrants,
    eastM,
    northM,
    rangeM,
  };
}

/** How many of the finest bundles there are; a share of the work is a stretch of their numbers from 0. */
export function rayCount(frame: RayFrame): number {
  const last = frame.quadrants.at(-1);
  return last ? last.firstRay + last.rays : 0;
}

/** Stretches of rays: from the first, up to, not including, the second. */
export type Stretches = Iterable<readonly [fromRay: number, toRay: number]>;

/** So many pieces of work there are: few enough that little is done twice, and more than enough for no thread to wait long for the last. */
const pieces = 32;

/** For threads to share: what {@link raysLeft} reads and writes. */
export function newPieces(): Int32Array {
  return new Int32Array(new SharedArrayBuffer(4));
}

/**
 * The stretches of the pieces that nobody else has taken, one after the other for as long as there are any. A piece is an even stretch of each quarter, since
 * the quarters of a station near an edge are not alike; the first lie along the axes.
 *
 * @param taken by all that work on the same frame, see {@link newPieces}
 */
export function* raysLeft(frame: RayFrame, taken: Int32Array): Stretches {
  const bound = ({ firstRay, rays }: Quadrant, part: number) => firstRay + Math.round((part * rays) / pieces);
  for (let turn = Atomics.add(taken, 0, 1); turn < pieces; turn = Atomics.add(taken, 0, 1)) {
    const piece = pieces / 2 + (turn % 2 === 0 ? turn / 2 : -(turn + 1) / 2);
    for (const quadrant of frame.quadrants) yield [bound(quadrant, piece), bound(quadrant, piece + 1)];
  }
}

/** Bundles beyond the diagonal that its bend can make those of a cell of the quarter. */
function slack(half: number): number {
  return 2 + Math.ceil(half / 50);
}

/**
 * The direction of a slope: cells of the minor axis for each of the major, at the station.
 *
 * Its bend is of second order, from the expansion of a great circle on a sphere about the station (eastward: the latitude falls by
 * `(tau² + 1/2) tan(phi) E² / R²`; northward: the longitude grows by `sigma (1 + sigma²/2) tan(phi) N² / R²`, tau and sigma the tangents of the
 * angle off the axis). The row counts southwards: a ray to the south finds the meridians wider.
 */
export function rayOf({ majorM, minorM, evenBend, oddBend }: Quadrant, slope: number): Ray {
  // Tangent of the angle off the axis, on the ground: north for the columns' quarters, east for the rows'.
  const tangent = (slope * minorM) / majorM;
  const square = tangent * tangent;
  const stretch = Math.sqrt(1 + square);
  const secondM = minorM * (evenBend * tangent + 0.5 * oddBend * square);
  return {
    slope,
    bend: evenBend * (square + 0.5) + oddBend * tangent * (1 + 0.5 * square),
    firstKm: (majorM * stretch) / 1000,
    secondKm: (secondM * stretch) / 1000,
    asideKm: minorM / 1000,
    alongKm: (minorM * tangent) / stretch / 1000,
  };
}
