/**
 * References of the Military Grid Reference System between 80° S and 84° N: zone, band, a square of 100 km in
 * two letters, then as many digits of easting as of northing. Digits are cut, not rounded, so that a
 * reference names the square a place lies in; it is read as the centre of that square.
 *
 * Source: NGA.SIG.0012_2.0.0_UTMUPS (2014), chapters 3 (UTM zones) and 7 (MGRS).
 */
import type { Position, SquareReading } from './position.ts';
import { centralMeridianDeg, fromUtm, toUtm, utmZone } from './utm.ts';

/** Bands of 8° from 80° S northwards, the last of 12°; I and O are left out, as they look like figures. */
const bands = 'CDEFGHJKLMNPQRSTUVWX';
const columnSets = ['ABCDEFGH', 'JKLMNPQR', 'STUVWXYZ'] as const;
const rows = 'ABCDEFGHJKLMNPQRSTUV';
const squareM = 100_000;
const rowsRepeatM = rows.length * squareM;
/** Rows of even zones begin with F at the equator. */
const evenZoneRow = 5;

/** Reads a reference with 0 to 5 digits each way, spaces allowed, as the centre of its square. */
export function readMgrs(text: string): SquareReading {
  const written = text.replaceAll(/\s/g, '').toUpperCase();
  const match = /^(\d{1,2})([A-Z])([A-Z])([A-Z])(\d*)$/.exec(written);
  if (!match) return wrong(written, 'has characters that no such reference has after the square letters');
  const [, zoneText = '', band = '', column = '', row = '', digits = ''] = match;
  const zone = Number(zoneText);
  const bandIndex = bands.indexOf(band);
  if (zone < 1 || zone > 60) return wrong(written, `has zone ${zone}; zones are 1 to 60`);
  if (bandIndex < 0) return wrong(written, `has band ${band}; bands are C to X without I and O`);
  if (band === 'X' && (zone === 32 || zone === 34 || zone === 36)) {
    return wrong(written, `has zone ${zone}X, which does not exist`);
  }
  if (digits.length % 2 !== 0) {
    return wrong(written, `has ${digits.length} digits; easting and northing take the same number each`);
  }
  if (digits.length > 10) return wrong(written, 'has more than five digits each way, finer than a metre');
  const columnIndex = columnSetOf(zone).indexOf(column);
  const rowIndex = rows.indexOf(row);
  if (columnIndex < 0 || rowIndex < 0)
    return wrong(written, `has square ${column}${row}, which zone ${zone} has not`);

  const figures = digits.length / 2;
  const sideM = squareM / 10 ** figures;
  const eastingM = (columnIndex + 1) * squareM + Number(digits.slice(0, figures) || 0) * sideM + sideM / 2;
  const inSquareM = Number(digits.slice(figures) || 0) * sideM + sideM / 2;
  const rowOffset = zone % 2 === 0 ? evenZoneRow : 0;
  const repeatingM = ((rowIndex - rowOffset + rows.length) % rows.length) * squareM + inSquareM;

  const north = bandIndex >= bands.indexOf('N');
  const lowest = -80 + 8 * bandIndex;
  const highest = band === 'X' ? 84 : lowest + 8;
  // Half of a square's diagonal, in degrees and with something to spare: squares cut by the edge of a band or
  // a zone have their centre outside.
  const slackDeg = (0.75 * sideM) / 111_000 + 0.01;
  for (let northingM = repeatingM; northingM < 10_000_000; northingM += rowsRepeatM) {
    const position = fromUtm({ zone, north, eastingM, northingM });
    if (position.latitudeDeg < lowest - slackDeg || position.latitudeDeg > highest + slackDeg) continue;
    const slackEastDeg = slackDeg / Math.cos((position.latitudeDeg * Math.PI) / 180);
    const [west, east] = zoneEdges(zone, band);
    if (position.longitudeDeg < west - slackEastDeg || position.longitudeDeg > east + slackEastDeg) break;
    return { ok: true, position: wrapped(position), withinM: sideM / Math.SQRT2 };
  }
  return wrong(written, `has square ${column}${row}, which ${zone}${band} does not hold`);
}

/** A millimetre. */
const equatorDeg = 1e-8;

/** The reference of a position with so many digits each way, or `undefined` nearer the poles than the system goes. */
export function writeMgrs(written: Position, figures: 0 | 1 | 2 | 3 | 4 | 5 = 5): string | undefined {
  // A millimetre south of the equator the northing rounds to that of the equator, in squares that the band has not.
  const position = Math.abs(written.latitudeDeg) < equatorDeg ? { ...written, latitudeDeg: 0 } : written;
  const { latitudeDeg } = position;
  if (latitudeDeg < -80 || latitudeDeg > 84) return undefined;
  const zone = utmZone(position);
  const { eastingM, northingM } = toUtm(position, zone);
  const band = bands.charAt(Math.min(Math.floor((latitudeDeg + 80) / 8), bands.length - 1));
  const column = columnSetOf(zone).charAt(Math.floor(eastingM / squareM) - 1);
  const rowOffset = zone % 2 === 0 ? evenZoneRow : 0;
  const row = rows.charAt((Math.floor(northingM / squareM) + rowOffset) % rows.length);
  const cut = (lengthM: number) =>
    figures === 0 ? '' : String(Math.floor((lengthM % squareM) / 10 ** (5 - figures))).padStart(figures, '0');
  return `${zone}${band}${column}${row}${cut(eastingM)}${cut(northingM)}`;
}

function columnSetOf(zone: number): string {
  return columnSets[(zone - 1) % 3] ?? columnSets[0];
}

function zoneEdges(zone: number, band: string): readonly [number, number] {
  const middle = centralMeridianDeg(zone);
  const widened: Readonly<Record<string, readonly [number, number]>> = {
    '31V': [0, 3],
    '32V': [3, 12],
    '31X': [0, 9],
    '33X': [9, 21],
    '35X': [21, 33],
    '37X': [33, 42],
  };
  return widened[`${zone}${band}`] ?? [middle - 3, middle + 3];
}

function wrapped(position: Position): Position {
  const { latitudeDeg, longitudeDeg } = position;
  return {
    latitudeDeg,
    longitudeDeg:
      longitudeDeg < -180 ? longitudeDeg + 360 : longitudeDeg > 180 ? longitudeDeg - 360 : longitudeDeg,
  };
}

function wrong(written: string, why: string): SquareReading {
  return { ok: false, reason: `MGRS reference ${written} ${why}.` };
}
