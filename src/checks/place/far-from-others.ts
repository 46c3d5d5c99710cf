import type { Position } from '../../plan/model.ts';
import { formatDistance } from '../../radio/format-quantity.ts';
import { commonPractice, rule } from '../rule.ts';

/** Farther apart than any group walks, drives or reaches on VHF, metres (common practice). */
const farM = 400_000;
/** A degree of a great circle, metres. */
const degreeM = 111_195;

/** A lost minus sign moves a village to another continent, and every path from it with it. */
export const placeFarFromOthers = rule({
  id: 'place/far-from-others',
  severity: 'warning',
  basis: 'consistency',
  looksFor: 'A place hundreds of kilometres from every other.',
  why: 'A group is local. A place that stands alone in another country has lost a minus sign, had its latitude and longitude exchanged, or has a digit too many.',
  mend: 'West and south have a minus sign, and latitude comes first: "36.6192, -84.2010".',
  sources: [commonPractice],
  bad: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  mill: { name: Mill, at: "36.5958, 84.2190" } # finding`,
  good: `
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  mill: { name: Mill, at: "36.5958, -84.2190" }`,
  *check({ plan }) {
    const places = [...plan.places.values()];
    const [one, other] = places;
    if (one && other && places.length === 2) {
      const apartM = roughDistanceM(one.at, other.at);
      // Which of two is astray cannot be told, so nothing is written instead.
      if (apartM > farM)
        yield {
          at: ['places', other.id, 'at'],
          message: `${one.name} and ${other.name} stand some ${inTens(apartM)} apart.`,
        };
      return;
    }
    const north = median(places.map(({ at }) => at.latitudeDeg));
    const east = median(places.map(({ at }) => at.longitudeDeg));
    const centre: Position = { latitudeDeg: north, longitudeDeg: east };
    for (const { id, name, at } of places) {
      const apartM = roughDistanceM(centre, at);
      if (apartM <= farM) continue;
      const mended = ways(at).find(({ position }) => roughDistanceM(centre, position) <= farM);
      yield {
        at: ['places', id, 'at'],
        message: `${name} stands some ${inTens(apartM)} from the other places.`,
        ...(mended && { suggestion: mended.text }),
      };
    }
  },
});

function inTens(apartM: number): string {
  return formatDistance(Math.round(apartM / 10_000) * 10_000);
}

/** What was likely meant: a sign, both signs, or the two numbers the other way round. */
function ways({ latitudeDeg, longitudeDeg }: Position): { text: string; position: Position }[] {
  const pairs: [number, number][] = [
    [latitudeDeg, -longitudeDeg],
    [-latitudeDeg, longitudeDeg],
    [-latitudeDeg, -longitudeDeg],
    [longitudeDeg, latitudeDeg],
  ];
  return pairs
    .filter(([north]) => Math.abs(north) <= 90)
    .map(([north, east]) => ({
      text: `"${north}, ${east}"`,
      position: { latitudeDeg: north, longitudeDeg: east },
    }));
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
}

/** Good to a percent at these distances, which is more than is asked. */
function roughDistanceM(a: Position, b: Position): number {
  const [lat1, lat2] = [a.latitudeDeg, b.latitudeDeg].map((degrees) => (degrees * Math.PI) / 180) as [
    number,
    number,
  ];
  const turn = ((b.longitudeDeg - a.longitudeDeg) * Math.PI) / 180;
  const cosine = Math.sin(lat1) * Math.sin(lat2) + Math.cos(lat1) * Math.cos(lat2) * Math.cos(turn);
  return (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180 * degreeM) / Math.PI;
}
