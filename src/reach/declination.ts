/**
 * Magnetic declination, so that a bearing can be followed with a compass: magnetic bearing = true bearing
 * minus declination, declination being positive where the needle points east of true north.
 *
 * World Magnetic Model (NOAA/NCEI and British Geological Survey), degree and order 12. A date that no model
 * covers is an answer, not a fault: plans outlive models.
 */
import type { Position } from './position.ts';

export type Declination =
  | {
      readonly ok: true;
      readonly declinationDeg: number;
      /** One standard deviation, from the WMM2025 report: sqrt(0.26² + (5417/H)²), H the horizontal field in nT. Iron nearby is not in it. */
      readonly uncertaintyDeg: number;
      /** Name of the model. */
      readonly model: string;
    }
  | { readonly ok: false; readonly reason: string };

/**
 * @param date ISO 8601 day, `2026-12-01`.
 * @param heightM above the ellipsoid; matters little near the ground.
 */
export async function magneticDeclination(
  position: Position,
  date: string,
  heightM = 0,
): Promise<Declination> {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`) : new Date(Number.NaN);
  if (Number.isNaN(day.getTime())) return { ok: false, reason: `${date} is no date of the form 2026-12-01.` };
  const { default: geomagnetism } = await import('geomagnetism');
  const model = modelOf(geomagnetism, day);
  if (!model) {
    const latest = geomagnetism.model(new Date(latestKnown));
    const end = latest.end_date.toISOString().slice(0, 10);
    return {
      ok: false,
      reason: `No magnetic model at hand covers ${date}; the latest, ${latest.name}, holds until ${end}.`,
    };
  }
  const field = model.point([position.latitudeDeg, position.longitudeDeg, heightM / 1000]);
  return {
    ok: true,
    declinationDeg: field.decl,
    uncertaintyDeg: Math.hypot(0.26, 5417 / field.h),
    model: model.name,
  };
}

/** A day that the latest model is known to cover. */
const latestKnown = '2025-06-01T00:00:00Z';

/** The library throws for a date it has no model for; told to go on regardless, it writes to the console. */
function modelOf(
  geomagnetism: typeof import('geomagnetism'),
  day: Date,
): import('geomagnetism').GeomagnetismModel | undefined {
  try {
    return geomagnetism.model(day);
  } catch {
    return undefined;
  }
}
