/**
 * Where a GeoTIFF says its samples stand, and whether that is a place this program can use: latitude and longitude
 * on WGS 84 or a datum within two metres of it, north up, heights in metres.
 *
 * Source: OGC GeoTIFF Standard 1.1 (19-008r4): tags 33550, 33922, 34264 and 34735; keys GTModelType (1024),
 * GTRasterType (1025), GeodeticCRS (2048), ProjectedCRS (3072), VerticalUnits (4099).
 */
import { Refusal } from '../findings/refusal.ts';
import type { TiffDirectory } from './tiff-directory.ts';

export interface GeotiffFrame {
  readonly northDeg: number;
  readonly westDeg: number;
  readonly stepNorthDeg: number;
  readonly stepEastDeg: number;
}

/** EPSG codes: WGS 84; NAD83 and ETRS89, which differ from it by less than two metres, below any grid's step. */
const usableDatums: readonly number[] = [4326, 4979, 4269, 4258];
const metre = 9001;

const reproject =
  'Convert it to latitude and longitude on WGS 84 (EPSG:4326) with a GIS program, and name the new file.';

/** Position of the north-west sample and the steps. A grid of cell areas has its first sample half a step inside its corner. */
export function geotiffFrame(directory: TiffDirectory, name: string): GeotiffFrame {
  const keys = geoKeys(directory);
  const model = keys.get(1024);
  if (model === undefined)
    throw new Refusal(`${name} does not say where it lies: it has no GeoTIFF keys.`, reproject);
  if (model !== 2) {
    const projected = keys.get(3072);
    const which = projected && projected !== 32_767 ? ` (EPSG:${projected})` : '';
    throw new Refusal(`${name} is on a map projection${which}, not in latitude and longitude.`, reproject);
  }
  const datum = keys.get(2048);
  if (datum !== undefined && datum !== 32_767 && !usableDatums.includes(datum)) {
    throw new Refusal(`${name} is on the datum EPSG:${datum}, not on WGS 84.`, reproject);
  }
  const heightUnit = keys.get(4099);
  if (heightUnit !== undefined && heightUnit !== metre) {
    throw new Refusal(
      `${name} has heights in a unit other than metres (EPSG:${heightUnit}).`,
      'Convert its heights to metres.',
    );
  }
  const { originEast, originNorth, stepEastDeg, stepNorthDeg } = placed(directory, name);
  // Key 1025: 1 the tie point is a corner of a cell, 2 it is the sample. Absent means 1 (section 7.1.2).
  const inset = keys.get(1025) === 2 ? 0 : 0.5;
  const westDeg = originEast + inset * stepEastDeg;
  const northDeg = originNorth - inset * stepNorthDeg;
  if (!(Math.abs(northDeg) <= 90.01 && westDeg >= -180.01 && westDeg <= 360.01)) {
    throw new Refusal(
      `${name} begins at latitude ${northDeg}, longitude ${westDeg}, which is nowhere on earth.`,
      reproject,
    );
  }
  return { westDeg: westDeg > 180 ? westDeg - 360 : westDeg, northDeg, stepEastDeg, stepNorthDeg };
}

interface Placing {
  readonly originEast: number;
  readonly originNorth: number;
  readonly stepEastDeg: number;
  readonly stepNorthDeg: number;
}

function placed(directory: TiffDirectory, name: string): Placing {
  const [scaleX, scaleY] = directory.numbers(33_550);
  const [column, row, , east, north] = directory.numbers(33_922);
  const matrix = directory.numbers(34_264);
  let placing: Placing | undefined;
  if (
    scaleX !== undefined &&
    scaleY !== undefined &&
    column !== undefined &&
    row !== undefined &&
    east !== undefined &&
    north !== undefined
  ) {
    placing = {
      originEast: east - column * scaleX,
      originNorth: north + row * scaleY,
      stepEastDeg: scaleX,
      stepNorthDeg: scaleY,
    };
  } else if (matrix.length === 16) {
    const [a = 0, b = 0, , d = 0, e = 0, f = 0, , h = 0] = matrix;
    if (b !== 0 || e !== 0) throw new Refusal(`${name} is turned against north.`, reproject);
    placing = { originEast: d, originNorth: h, stepEastDeg: a, stepNorthDeg: -f };
  }
  if (!placing) throw new Refusal(`${name} does not say where its samples stand.`, reproject);
  const { stepEastDeg, stepNorthDeg } = placing;
  const plausible = (step: number) => step > 1e-6 && step < 1;
  if (!plausible(stepEastDeg) || !plausible(stepNorthDeg)) {
    throw new Refusal(
      `${name} has steps of ${stepNorthDeg} by ${stepEastDeg} degrees, which no elevation grid has.`,
      reproject,
    );
  }
  return placing;
}

/** Keys whose value is a short number; the others (texts, doubles) are not needed. */
function geoKeys(directory: TiffDirectory): ReadonlyMap<number, number> {
  const words = directory.numbers(34_735);
  const keys = new Map<number, number>();
  for (let at = 4; at + 3 < words.length; at += 4) {
    const [key = 0, location, , value = 0] = words.slice(at, at + 4);
    if (location === 0) keys.set(key, value);
  }
  return keys;
}
