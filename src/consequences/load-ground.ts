/** The ground of a plan: its elevation files as one terrain, the geodesy, and the declination at each place. */
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { magneticDeclination } from '../reach/declination.ts';
import { loadGeodesy } from '../reach/geodesy.ts';
import type { ElevationGrid } from '../reach/grid.ts';
import { mosaic } from '../reach/mosaic.ts';
import { readGeotiff } from '../reach/read-geotiff.ts';
import { readHgt } from '../reach/read-hgt.ts';
import type { Ground } from './paths.ts';

/**
 * @param read reads a file by its path from the plan's folder
 * @throws {Refusal} for an elevation file that cannot be read as one, named
 */
export async function loadGround(plan: Plan, read: (path: string) => Promise<Uint8Array>): Promise<Ground> {
  const grids: ElevationGrid[] = [];
  for (const file of plan.terrain.files) {
    const bytes = await read(file);
    const extension = /\.[a-z]+$/i.exec(file)?.[0].toLowerCase();
    if (extension === '.hgt') grids.push(readHgt(bytes, file));
    else if (extension === '.tif' || extension === '.tiff') grids.push(await readGeotiff(bytes, file));
    else
      throw new Refusal(
        `${file} is no elevation file.`,
        'Terrain files are GeoTIFF (.tif) or SRTM tiles (.hgt).',
      );
  }
  const declinationDeg = new Map<string, number>();
  for (const place of plan.places.values()) {
    const declination = await magneticDeclination(place.at, plan.effective);
    if (declination.ok) declinationDeg.set(place.id, declination.declinationDeg);
  }
  return { terrain: mosaic(grids), geodesy: await loadGeodesy(), declinationDeg };
}
