/** Names of time zones, as the IANA time zone database that comes with the platform has them. */
import { nearest } from '../findings/nearest.ts';

/** A zone by name. `EST` and `+01:00`, which platforms take as well, are not names of places that keep a time. */
export function isZone(name: string): boolean {
  if (!/^[A-Z][\w+-]*(\/[\w+-]+)+$|^UTC$/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en-US', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

/** The zone most likely meant: by its whole name, or by its city alone, so that `New_York` finds America/New_York. */
export function nearestZone(name: string): string | undefined {
  const zones = Intl.supportedValuesOf('timeZone');
  const city = (zone: string): string => zone.split('/').at(-1) ?? zone;
  const near = nearest(name, zones);
  if (near !== undefined) return near;
  const nearCity = nearest(city(name), zones.map(city));
  return zones.find((zone) => city(zone) === nearCity);
}
