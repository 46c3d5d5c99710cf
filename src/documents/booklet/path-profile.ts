/**
 * The ground under a path, raised by the bulge of the earth as the median air makes it, with the line of sight,
 * the first Fresnel zone around it and a triangle at the worst obstacle. Heights are drawn many times too steep.
 */
import type { RadioPath } from '../../consequences/paths.ts';
import { earthBulgeM } from '../../reach/earth.ts';
import { firstFresnelZoneM } from '../../reach/fresnel.ts';
import type { Profile } from '../../reach/profile.ts';
import type { Point, Scene, Shape } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import { widthMm as wordsWidthMm } from './figure-words.ts';

const widthMm = 86;
const heightMm = 40;
const plot = { left: 12, right: 84, top: 3, bottom: 34 } as const;
/** Between figures on one line. */
const apartMm = 1.5;
/** More points than this the eye cannot tell apart on so small a picture. */
const mostPoints = 140;

export function pathProfile(
  profile: Profile,
  path: Pick<RadioPath, 'heightsM' | 'prediction'>,
  frequencyHz: number,
  alt: string,
  measure: Measure,
): Scene {
  const lengthKm = profile.distancesKm.at(-1) ?? 0;
  const ground = thinned(profile).map(
    ([km, heightM]): Point => [km, heightM + earthBulgeM(km, lengthKm - km)],
  );
  const start = (profile.heightsM[0] ?? 0) + path.heightsM.from;
  const end = (profile.heightsM.at(-1) ?? 0) + path.heightsM.to;
  const sight = (km: number) => start + ((end - start) * km) / lengthKm;
  const shares = Array.from({ length: 41 }, (_, index) => index / 40);
  const zone = (sign: number): Point[] =>
    shares.map((share) => {
      const km = share * lengthKm;
      const radiusM =
        share === 0 || share === 1 ? 0 : firstFresnelZoneM(frequencyHz, km * 1000, (lengthKm - km) * 1000);
      return [km, sight(km) + sign * radiusM];
    });
  const heights = [...ground, ...zone(1), ...zone(-1)].map(([, heightM]) => heightM);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const margin = Math.max((high - low) * 0.05, 5);
  const x = (km: number) => plot.left + (km / lengthKm) * (plot.right - plot.left);
  const y = (heightM: number) =>
    plot.bottom - ((heightM - low + margin) / (high - low + 2 * margin)) * (plot.bottom - plot.top);
  const place = (points: readonly Point[]): Point[] => points.map(([km, heightM]) => [x(km), y(heightM)]);
  const length = `${lengthKm.toFixed(1)} km`;
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: [[plot.left, plot.bottom], ...place(ground), [plot.right, plot.bottom]],
      fill: 0.85,
    },
    { kind: 'line', points: place(ground), widthMm: 0.35 },
    {
      kind: 'line',
      points: place([
        [0, start],
        [lengthKm, end],
      ]),
      widthMm: 0.35,
    },
    { kind: 'line', points: place(zone(1)), widthMm: 0.2, dashMm: [0.8, 0.8] },
    { kind: 'line', points: place(zone(-1)), widthMm: 0.2, dashMm: [0.8, 0.8] },
    {
      kind: 'line',
      points: [
        [plot.left, plot.top],
        [plot.left, plot.bottom],
        [plot.right, plot.bottom],
      ],
      widthMm: 0.2,
    },
    ...[low, high].map(
      (heightM): Shape => ({
        kind: 'words',
        x: plot.left - 1,
        y: Math.max(y(heightM) + 1, plot.top + 2),
        text: String(Math.round(heightM)),
        sizePt: 8,
        align: 'end',
      }),
    ),
    { kind: 'words', x: plot.left, y: plot.bottom + 4, text: '0', sizePt: 8, align: 'center' },
    {
      kind: 'words',
      x: plot.right,
      y: plot.bottom + 4,
      text: length,
      sizePt: 8,
      align: 'end',
    },
  ];
  const obstacle = path.prediction.ok ? path.prediction.obstacle : undefined;
  if (obstacle !== undefined && obstacle.aboveLineM > -0.6 * obstacle.fresnelZoneM) {
    const top = y(obstacle.groundM + earthBulgeM(obstacle.alongKm, lengthKm - obstacle.alongKm));
    const middle = x(obstacle.alongKm);
    shapes.push({
      kind: 'polygon',
      points: [
        [middle - 1.2, top - 2.6],
        [middle + 1.2, top - 2.6],
        [middle, top - 0.4],
      ],
      fill: 0,
    });
    const along = obstacle.alongKm.toFixed(1);
    // Beside the distances at both ends, even where the obstacle is above one of them.
    const wide = (text: string) => wordsWidthMm(text, 8, false, measure);
    const from = plot.left + wide('0') / 2 + apartMm + wide(along) / 2;
    const to = plot.right - wide(length) - apartMm - wide(along) / 2;
    shapes.push({
      kind: 'words',
      x: Math.min(Math.max(middle, from), to),
      y: plot.bottom + 4,
      text: along,
      sizePt: 8,
      align: 'center',
    });
  }
  return { widthMm, heightMm, alt, shapes };
}

/** Neighbours are taken together and stand as the highest of them: a ridge is never thinned away. */
function thinned(profile: Profile): Point[] {
  const all = Array.from(profile.distancesKm, (km, index): Point => [km, profile.heightsM[index] ?? 0]);
  const step = Math.ceil(all.length / mostPoints);
  if (step <= 1) return all;
  const kept: Point[] = [];
  for (let from = 1; from < all.length - 1; from += step) {
    const some = all.slice(from, Math.min(from + step, all.length - 1));
    kept.push(some.reduce((best, point) => (point[1] > best[1] ? point : best)));
  }
  return [all[0] ?? [0, 0], ...kept, all.at(-1) ?? [0, 0]];
}
