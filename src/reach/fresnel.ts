/**
 * The first Fresnel zone: the room around the line of sight that a path needs. With 0.6 of it clear of ground the loss is that of
 * free space, near enough. Source: Recommendation ITU-R P.526, §2.1.
 */
import { wavelengthM } from './free-space.ts';

/** Radius of the first Fresnel zone at so many metres from the two ends, m: `sqrt(lambda d1 d2 / d)`. */
export function firstFresnelZoneM(frequencyHz: number, fromStartM: number, fromEndM: number): number {
  return Math.sqrt((wavelengthM(frequencyHz) * fromStartM * fromEndM) / (fromStartM + fromEndM));
}
