/**
 * An elevation grid from an SRTM tile: no header, 16-bit big-endian metres row by row from the north, -32768 where nothing was
 * measured. Samples stand on whole arc seconds, and neighbouring tiles share their edges. The place is in the name of the
 * file only: N36W085 has its south-west corner at 36° N, 85° W.
 *
 * Source: NASA/JPL, "SRTM Topography" (SRTM_Topo.txt), section 2.1.
 */
import { Refusal } from '../findings/refusal.ts';
import { believableHeightsM, type ElevationGrid, voidHeight } from './grid.ts';

/** Samples along a side, by file size: one and three arc seconds. */
const sides: ReadonlyMap<number, number> = new Map([1201, 3601].map((side) => [2 * side * side, side]));

export function readHgt(bytes: Uint8Array, fileName: string): ElevationGrid {
  const corner = /(?:^|[/\\])([NS])(\d{2})([EW])(\d{3})[^/\\]*$/i.exec(fileName);
  if (!corner) {
    throw new Refusal(
      `${fileName} does not say where it lies: an SRTM tile is named for its south-west corner.`,
      'Give it its name back, like N36W085.hgt.',
    );
  }
  const [, ns = 'N', latitude = '', ew = 'E', longitude = ''] = corner;
  const southDeg = Number(latitude) * (ns.toUpperCase() === 'S' ? -1 : 1);
  const westDeg = Number(longitude) * (ew.toUpperCase() === 'W' ? -1 : 1);
  if (southDeg < -90 || southDeg > 89 || westDeg < -180 || westDeg > 179) {
    throw new Refusal(`${fileName} is named for a corner that is nowhere on earth.`);
  }
  const side = sides.get(bytes.length);
  if (side === undefined) {
    throw new Refusal(
      `${fileName} has ${bytes.length} bytes; an SRTM tile has ${[...sides.keys()].join(' or ')}.`,
      'Fetch the file again; unpack it first if it is zipped.',
    );
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const heightsM = new Int16Array(side * side);
  for (let index = 0; index < heightsM.length; index++) {
    const height = view.getInt16(2 * index);
    heightsM[index] =
      height >= believableHeightsM.lowest && height <= believableHeightsM.highest ? height : voidHeight;
  }
  const stepDeg = 1 / (side - 1);
  return {
    name: fileName,
    columns: side,
    rows: side,
    northDeg: southDeg + 1,
    westDeg,
    stepNorthDeg: stepDeg,
    stepEastDeg: stepDeg,
    heightsM,
  };
}
