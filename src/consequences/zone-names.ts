/** Names of time zones, as the IANA time zone database that comes with the platform has them. */
import { editDistance, nearest } from '../findings/nearest.ts';

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

/** What people call zones, and the zone of the tz database that keeps that time with its clock changes. */
const nicknames: Readonly<Record<string, string>> = {
  eastern: 'America/New_York',
  est: 'America/New_York',
  edt: 'America/New_York',
  central: 'America/Chicago',
  cst: 'America/Chicago',
  mountain: 'America/Denver',
  mst: 'America/Denver',
  pacific: 'America/Los_Angeles',
  pst: 'America/Los_Angeles',
  gmt: 'Europe/London',
  bst: 'Europe/London',
  cet: 'Europe/Berlin',
  cest: 'Europe/Berlin',
  aest: 'Australia/Sydney',
  acst: 'Australia/Adelaide',
  awst: 'Australia/Perth',
  nzst: 'Pacific/Auckland',
};

/**
 * The zone most likely meant: by what people call it, by its whole name, or by its city alone, so that `New_York`
 * finds America/New_York. A city is matched to a letter, since a near miss of one may lie on another continent.
 */
export function nearestZone(name: string): string | undefined {
  const nickname = nicknames[name.toLowerCase().replace(/[ _-]?(standard|daylight)?[ _-]?time$/, '')];
  if (nickname !== undefined) return nickname;
  const zones = Intl.supportedValuesOf('timeZone');
  if (name.includes('/')) {
    const near = nearest(name, zones);
    if (near !== undefined) return near;
  }
  const city = (zone: string): string => (zone.split('/').at(-1) ?? zone).toLowerCase();
  const wanted = city(name.replaceAll(' ', '_'));
  return (
    zones.find((zone) => city(zone) === wanted) ??
    zones.find((zone) => wanted.length > 4 && editDistance(city(zone), wanted) === 1)
  );
}
