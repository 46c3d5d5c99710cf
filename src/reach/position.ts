/**
 * Where a station stands, and the three ways in which people write it: decimal degrees, a Maidenhead
 * locator, a reference of the Military Grid Reference System. Light and synchronous, since every check of a plan
 * reads positions.
 *
 * Degrees are those of WGS 84, north and east positive.
 */
import { readMaidenhead } from './maidenhead.ts';
import { readMgrs, writeMgrs } from './mgrs.ts';

export interface Position {
  /** -90 … 90, north positive. */
  readonly latitudeDeg: number;
  /** -180 … 180, east positive. */
  readonly longitudeDeg: number;
}

/** How a position was written. */
export type PositionNotation = 'degrees' | 'locator' | 'mgrs';

export type PositionReading =
  | {
      readonly ok: true;
      readonly position: Position;
      readonly notation: PositionNotation;
      /**
       * How far the true place may be from `position`, metres: half the diagonal of the square that was
       * named, or half of the last decimal. A four-character locator names a square some 140 km across,
       * and no path can be predicted from its centre.
       */
      readonly withinM: number;
    }
  | {
      readonly ok: false;
      /** One sentence: what is wrong with it. */
      readonly reason: string;
    };

/** What a reader within this room hands back: the centre of what was named, and how far off it may be. */
export type SquareReading =
  | { readonly ok: true; readonly position: Position; readonly withinM: number }
  | { readonly ok: false; readonly reason: string };

/** One good example of each notation, for the message about anything else. */
export const positionExamples = '"36.6246, -84.2346", EM76vo or 16SGF4728656791';

/** Length of one degree of a great circle on a sphere of the earth's mean radius, metres. */
const metresPerDegree = 111_195;

/** Reads a position in any of the three notations; says in one sentence what is wrong with anything else. */
export function parsePosition(text: string): PositionReading {
  const written = text.trim();
  if (written === '')
    return { ok: false, reason: `The position is empty; write it like ${positionExamples}.` };
  if (/^[A-Za-z]{2}\d{2}/.test(written)) return noted(readMaidenhead(written), 'locator');
  if (/^\d{1,2}\s*[A-Za-z]\s*[A-Za-z]{2}/.test(written)) return noted(readMgrs(written), 'mgrs');
  return noted(readDegrees(written), 'degrees');
}

/**
 * A position as this program writes it: degrees to five decimals (about a metre), or the MGRS reference to
 * ten metres. Near the poles, which MGRS grids of this kind leave out, degrees stand in for `mgrs`.
 */
export function formatPosition(position: Position, notation: 'degrees' | 'mgrs' = 'degrees'): string {
  const degrees = `${position.latitudeDeg.toFixed(5)}, ${position.longitudeDeg.toFixed(5)}`;
  return notation === 'mgrs' ? (writeMgrs(position, 4) ?? degrees) : degrees;
}

function noted(reading: SquareReading, notation: PositionNotation): PositionReading {
  return reading.ok ? { ...reading, notation } : reading;
}

function readDegrees(written: string): SquareReading {
  const match = /^([+-]?\d{1,3}(?:\.(\d{1,12}))?)\s*(?:,|\s)\s*([+-]?\d{1,3}(?:\.(\d{1,12}))?)$/.exec(
    written,
  );
  if (!match) return { ok: false, reason: whyNotDegrees(written) };
  const latitudeDeg = Number(match[1]);
  const longitudeDeg = Number(match[3]);
  if (Math.abs(latitudeDeg) > 90) {
    const swapped = Math.abs(longitudeDeg) <= 90 ? '; latitude comes first' : '';
    return { ok: false, reason: `Latitude ${match[1]} is beyond 90 degrees${swapped}.` };
  }
  if (Math.abs(longitudeDeg) > 180) {
    return { ok: false, reason: `Longitude ${match[3]} is beyond 180 degrees.` };
  }
  const decimals = Math.min(match[2]?.length ?? 0, match[4]?.length ?? 0);
  const half = 0.5 * 10 ** -decimals * metresPerDegree;
  const withinM = Math.hypot(half, half * Math.cos((latitudeDeg * Math.PI) / 180));
  // Adding zero turns -0 into 0, which would otherwise be written as such.
  return { ok: true, position: { latitudeDeg: latitudeDeg + 0, longitudeDeg: longitudeDeg + 0 }, withinM };
}

function whyNotDegrees(written: string): string {
  if (/[°'"′″]|\d\s+\d+(\.\d+)?\s+\d/.test(written)) {
    return `"${written}" is in degrees and minutes; write decimal degrees like "36.6246, -84.2346".`;
  }
  if (/^[+-]?\d+(\.\d+)?\s*°?\s*[NS]\b/i.test(written)) {
    return `"${written}" has letters for the hemisphere; write south and west with a minus sign, like "36.6246, -84.2346".`;
  }
  if (/^[+-]?\d+,\d+\s*[,;\s]\s*[+-]?\d+,\d+$/.test(written)) {
    return `"${written}" has decimal commas; write decimal points, like "36.6246, -84.2346".`;
  }
  if (/^[+-]?\d+(\.\d+)?$/.test(written)) {
    return `"${written}" is one number only; write latitude and longitude in quotation marks, like "36.6246, -84.2346".`;
  }
  return `"${written}" is no position; write it like ${positionExamples}.`;
}
