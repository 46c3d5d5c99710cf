import type { AreaRow } from '../country.ts';
import { around, greatCircle, type Point } from '../ground.ts';
import { mhz } from '../mhz.ts';

/*
 * Where the same segment has other rules by place: north of Line A, near the proving ranges, and in the
 * areas of 47 CFR 2.106(c)(270). Towns, bases and state outlines are coordinates from memory, to a tenth of
 * a degree or so: near an edge, look at the map that the rule names.
 */
const aberdeen: Point = [46.98, -123.82];
const duluth: Point = [46.65, -92.2];
const bangor: Point = [44.73, -68.8];
const searsport: Point = [44.4, -68.92];

/** Line A as 97.3(a)(30) draws it, closed round the north through Canada and the Atlantic. */
const northOfLineA: readonly Point[] = [
  ...greatCircle(aberdeen, [48, -120]),
  ...greatCircle([48, -95], duluth),
  ...greatCircle(duluth, [45, -85]),
  [41, -85],
  ...greatCircle([41, -82], bangor),
  searsport,
  [43.5, -66],
  [50, -55],
  [75, -55],
  [75, -130],
  [50, -130],
  [46.98, -126],
];

/** East of Line C, with the Alaskan panhandle. */
const eastOfLineC: readonly Point[] = [
  ...greatCircle([70, -144], [60, -143]),
  [57, -139],
  [54, -135],
  [54, -129],
  [60, -129],
  [70, -129],
];

const box = (south: number, north: number, west: number, east: number): readonly Point[] => [
  [south, west],
  [north, west],
  [north, east],
  [south, east],
];

const closed = (
  service: string,
  area: string,
  polygon: readonly Point[],
  from: string,
  to: string,
  source: string,
  extra: Partial<AreaRow> = {},
): AreaRow => ({ service, area, polygon, fromHz: mhz(from), toHz: mhz(to), source, ...extra });
const fifty = (area: string, polygon: readonly Point[], extra: Partial<AreaRow> = {}): AreaRow =>
  closed('amateur', area, polygon, '420', '450', 'cfr-97.313-f', { maxW: 50, ...extra });

const memory = { fromMemory: true } as const;
const advised = { fromMemory: true, advisory: true } as const;
const whiteSands = box(31 + 41 / 60, 34.5, -107.5, -(104 + 11 / 60));
const rockies = box(39, 42, -108, -103);
const corners = 'The segments were read; the corners of the area are from memory.';
const outline = 'That the area is one was read; its outline is rough and from memory.';
const range = 'The distance was read; the boundary of the range is drawn roughly and from memory.';

const florida: readonly Point[] = [
  [31.05, -87.65],
  [31.05, -85],
  [30.75, -84.8],
  [30.65, -82.2],
  [30.85, -81.9],
  [30.85, -81.2],
  [27, -79.8],
  [24.9, -79.9],
  [24.2, -82.2],
  [24.5, -83],
  [27.5, -83.2],
  [29, -83.8],
  [29.4, -85.6],
  [30.2, -87.65],
];
const arizona: readonly Point[] = [
  [37.01, -114.06],
  [37.01, -109.04],
  [31.32, -109.04],
  [31.32, -111.08],
  [32.48, -114.83],
  [34.3, -114.5],
  [35, -114.66],
  [36.05, -114.78],
  [36.2, -114.06],
];
const newMexico: readonly Point[] = [
  [37.01, -109.06],
  [37.01, -102.99],
  [31.99, -102.99],
  [31.99, -106.64],
  [31.77, -106.64],
  [31.77, -108.22],
  [31.32, -108.22],
  [31.32, -109.06],
];

export const areas: readonly AreaRow[] = [
  closed('amateur', 'north of Line A', northOfLineA, '420', '430', 'cfr-97.303-m', {
    note: 'Towns on the line are held to about 5 km, from memory.',
  }),

  closed('amateur', 'White Sands, in Texas and New Mexico', whiteSands, '902', '928', 'cfr-97.303-n'),
  closed('amateur', 'Colorado and Wyoming, 39-42° N, 103-108° W', rockies, '902.4', '902.6', 'cfr-97.303-n', {
    note: corners,
  }),
  closed('amateur', 'Colorado and Wyoming, 39-42° N, 103-108° W', rockies, '904.3', '904.7', 'cfr-97.303-n', {
    note: corners,
  }),
  closed('amateur', 'Colorado and Wyoming, 39-42° N, 103-108° W', rockies, '925.3', '925.7', 'cfr-97.303-n', {
    note: corners,
  }),
  closed('amateur', 'Colorado and Wyoming, 39-42° N, 103-108° W', rockies, '927.3', '927.7', 'cfr-97.303-n', {
    note: corners,
  }),
  closed(
    'amateur',
    'within 241 km of the White Sands range',
    box(30, 36.1, -109.5, -103.3),
    '902',
    '928',
    'cfr-97.313-g',
    { maxW: 50, note: range },
  ),

  fifty('Florida', florida, { note: outline }),
  fifty('Arizona', arizona, { note: outline }),
  fifty('New Mexico', newMexico, { note: outline }),
  fifty('west Texas', box(31.75, 34.5, -107.5, -104), { note: outline }),
  fifty(
    'California and Nevada south of 37° 10′ N',
    [
      [37.17, -122.6],
      [37.17, -114.05],
      [36, -114.05],
      [35, -114.6],
      [32.7, -114.5],
      [32.5, -117.3],
      [34.3, -120.8],
    ],
    memory,
  ),
  fifty('within 322 km of Eglin, Florida', around([30.5, -86.5], 322), memory),
  fifty('within 322 km of Patrick, Florida', around([28.35, -80.72], 322), memory),
  fifty('within 240 km of Beale, California', around([39.13, -121.43], 240), memory),
  fifty('within 200 km of Goodfellow, Texas', around([31.42, -100.4], 200), memory),
  fifty('within 200 km of Warner Robins, Georgia', around([32.63, -83.58], 200), memory),
  fifty('within 200 km of Clear, Alaska', around([64.28, -149.17], 200), memory),
  fifty('within 200 km of Concrete, North Dakota', around([48.72, -97.9], 200), memory),
  fifty('within 160 km of Otis, Massachusetts', around([41.75, -70.53], 160), memory),

  closed('gmrs', 'north of Line A', northOfLineA, '462.650', '462.650', 'line-a-gmrs', advised),
  closed('gmrs', 'north of Line A', northOfLineA, '462.700', '462.700', 'line-a-gmrs', advised),
  closed('gmrs', 'north of Line A', northOfLineA, '467.650', '467.650', 'line-a-gmrs', advised),
  closed('gmrs', 'north of Line A', northOfLineA, '467.700', '467.700', 'line-a-gmrs', advised),
  closed('gmrs', 'east of Line C', eastOfLineC, '462.650', '462.650', 'line-a-gmrs', advised),
  closed('gmrs', 'east of Line C', eastOfLineC, '462.700', '462.700', 'line-a-gmrs', advised),
  closed('gmrs', 'east of Line C', eastOfLineC, '467.650', '467.650', 'line-a-gmrs', advised),
  closed('gmrs', 'east of Line C', eastOfLineC, '467.700', '467.700', 'line-a-gmrs', advised),

  closed('interoperability', 'north of Line A', northOfLineA, '151', '160', 'nifog', {
    maxW: 3,
    measure: 'erp',
  }),
  closed('interoperability', 'north of Line A', northOfLineA, '453', '459', 'nifog', {
    maxW: 3,
    measure: 'erp',
  }),
  closed('interoperability', 'east of Line C', eastOfLineC, '151', '160', 'nifog', {
    maxW: 3,
    measure: 'erp',
  }),
  closed('interoperability', 'east of Line C', eastOfLineC, '453', '459', 'nifog', {
    maxW: 3,
    measure: 'erp',
  }),
];
