/**
 * Maidenhead locators: pairs of characters, longitude first in each, that narrow a square of the earth down from
 * 20° by 10° (field) to 30″ by 15″ (extended square). Longitude counts from 180° W, latitude from the south pole.
 *
 * Source: IARU Region 1 VHF Managers Handbook, "The Locator system"; E. Tyson, "Conversion between geodetic
 * and grid locator systems", QST, January 1989, p. 29. Pairs beyond the fourth are not defined there.
 */
import type { Position, SquareReading } from './position.ts';

/** How many squares a pair divides the one before into, along each side. */
const divisions = [18, 10, 24, 10] as const;

/** Reads a locator of 4, 6 or 8 characters, in either case, as the centre of its square. */
export function readMaidenhead(text: string): SquareReading {
  const locator = text.trim();
  if (!/^[0-9a-z]+$/i.test(locator) || ![4, 6, 8].includes(locator.length)) {
    return {
      ok: false,
      reason: `Locator ${locator} has ${locator.length} characters; a locator has 4, 6 or 8, like EM76vo.`,
    };
  }
  let longitudeDeg = -180;
  let latitudeDeg = -90;
  let widthDeg = 360;
  let heightDeg = 180;
  for (const [pair, count] of divisions.slice(0, locator.length / 2).entries()) {
    widthDeg /= count;
    heightDeg /= count;
    for (const axis of [0, 1] as const) {
      const character = locator.charAt(2 * pair + axis);
      const step = count === 10 ? '0123456789'.indexOf(character) : letters.indexOf(character.toUpperCase());
      if (step < 0 || step >= count) {
        const range = count === 10 ? '0 to 9' : `A to ${letters.charAt(count - 1)}`;
        return {
          ok: false,
          reason: `Locator ${locator} has ${character} as character ${2 * pair + axis + 1}, where ${range} can stand.`,
        };
      }
      if (axis === 0) longitudeDeg += step * widthDeg;
      else latitudeDeg += step * heightDeg;
    }
  }
  const position = { latitudeDeg: latitudeDeg + heightDeg / 2, longitudeDeg: longitudeDeg + widthDeg / 2 };
  const eastM = (widthDeg / 2) * metresPerDegree * Math.cos((position.latitudeDeg * Math.PI) / 180);
  return { ok: true, position, withinM: Math.hypot(eastM, (heightDeg / 2) * metresPerDegree) };
}

/**
 * The locator of a position, to so many pairs: 2 is `EM76`, 3 is `EM76vo`, 4 is `EM76vo82`. Letters of the third
 * pair are written small, as is the custom. The pole and the 180th meridian, which would begin a nineteenth
 * field, belong to the last square of the eighteenth.
 */
export function maidenhead(position: Position, pairs: 2 | 3 | 4 = 3): string {
  // Counted in whole extended squares, so that no pair can disagree with the one before it by rounding.
  const across = 18 * 10 * 24 * 10;
  const east = clamp(Math.floor(((position.longitudeDeg + 180) / 360) * across + rounding), across);
  const north = clamp(Math.floor(((position.latitudeDeg + 90) / 180) * across + rounding), across);
  let text = '';
  let size = across;
  for (const [pair, count] of divisions.slice(0, pairs).entries()) {
    size /= count;
    for (const whole of [east, north]) {
      const step = Math.floor(whole / size) % count;
      text +=
        count === 10 ? String(step) : pair === 2 ? letters.charAt(step).toLowerCase() : letters.charAt(step);
    }
  }
  return text;
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWX';

/** A corner of a square, read from text and written again, must not fall into the square before it. */
const rounding = 1e-7;

/** One degree of a great circle, mean radius of the earth, metres. */
const metresPerDegree = 111_195;

function clamp(whole: number, count: number): number {
  return Math.min(Math.max(whole, 0), count - 1);
}
