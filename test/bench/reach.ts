/**
 * Reach rasters against GDAL's viewshed (gdal-bin, https://gdal.org), where that is installed:
 *
 *   npm run bench -- reach
 *
 * 1. What is in sight, cell by cell: the sweep, brute force (for every cell the straight line to it, sampled once a cell of its longer axis), and
 *    `gdal_viewshed -cc 0.75`, on the example terrain warped to 90 m cells of UTM zone 16. GDAL 3.6.2 goes wrong near the observer and on the diagonals (its issues
 *    10205, 10588), so it is compared where the sight line clears or misses by 5 m or more and beyond 5 km.
 * 2. Whole processes on 3601 x 3601 cells of the same ground, turn about, medians of five: the line of sight, and the loss of every cell; and
 *    that loss against the per-profile method.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { fromArrayBuffer } from 'geotiff';
import { diffractionLoss } from '../../src/reach/diffraction.ts';
import { freeSpaceLossDb } from '../../src/reach/free-space.ts';
import { type ElevationGrid, positionOf } from '../../src/reach/grid.ts';
import { rayCount, rayFrame } from '../../src/reach/rays.ts';
import { readGeotiff } from '../../src/reach/read-geotiff.ts';
import { sightRaysPerCell, sweepSight } from '../../src/reach/sight-sweep.ts';
import { profileTo } from '../reach/sweep.fixture.ts';
import { lossSettings } from './loss-settings.ts';

let folder = '';
const file = (name: string) => join(folder, name);
const run = (program: string, ...args: readonly string[]) =>
  execFileSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
const say = (line: string) => process.stdout.write(`${line}\n`);

/** Inside the project, so that packages left out of it are found. */
const bundle = 'out/.bench/reach-process.mjs';

/** k = 4/3 on the sphere of GDAL's own reckoning. */
const gdalRadiusKm = 8504.18;
const cellM = 90;

export async function benchReach(): Promise<void> {
  if (spawnSync('gdal_viewshed').error) {
    say('reach: skipped, since gdal_viewshed (gdal-bin) is not installed');
    return;
  }
  folder = mkdtempSync(join(tmpdir(), 'readback-reach-'));
  try {
    await compareSight();
    await compareTimes();
  } finally {
    rmSync(folder, { recursive: true, force: true });
    rmSync(bundle, { force: true });
  }
}

async function band(
  path: string,
): Promise<{ readonly columns: number; readonly rows: number; readonly samples: Float32Array }> {
  const image = await (await fromArrayBuffer(new Uint8Array(readFileSync(path)).buffer)).getImage();
  const [samples] = await image.readRasters();
  if (!samples || typeof samples === 'number') throw new Error(`${path} has no band`);
  return { columns: image.getWidth(), rows: image.getHeight(), samples: Float32Array.from(samples) };
}

/** A flat map laid on the equator under the observer, where a step of latitude and one of longitude can both be 90 m and meridians run straight. */
function onEquator(
  map: { readonly columns: number; readonly rows: number; readonly samples: Float32Array },
  row: number,
): ElevationGrid {
  const perDegree = Math.PI / 180;
  const stepNorthDeg = cellM / (6_378_137 * (1 - 0.006_694_379_990_14) * perDegree);
  return {
    name: 'utm',
    columns: map.columns,
    rows: map.rows,
    heightsM: map.samples,
    northDeg: row * stepNorthDeg,
    westDeg: 0,
    stepNorthDeg,
    stepEastDeg: cellM / (6_378_137 * perDegree),
  };
}

/** Least clearance of the straight line to a cell, m; infinite next door. */
function bruteClearanceM(
  grid: ElevationGrid,
  fromRow: number,
  fromColumn: number,
  stationM: number,
  targetM: number,
  row: number,
  column: number,
): number {
  const { heightsM, columns } = grid;
  const [down, right] = [row - fromRow, column - fromColumn];
  const steps = Math.max(Math.abs(down), Math.abs(right));
  const endM = (heightsM[row * columns + column] ?? 0) + targetM;
  const km = (Math.hypot(down, right) * cellM) / 1000;
  let least = Number.POSITIVE_INFINITY;
  for (let step = 1; step < steps; step++) {
    const share = step / steps;
    const [r, c] = [fromRow + down * share, fromColumn + right * share];
    const [r0, c0] = [Math.floor(r + 1e-9), Math.floor(c + 1e-9)];
    const [dr, dc] = [Math.max(0, r - r0), Math.max(0, c - c0)];
    const at = (rr: number, cc: number) =>
      heightsM[Math.min(rr, grid.rows - 1) * columns + Math.min(cc, columns - 1)] ?? 0;
    const ground =
      (1 - dr) * ((1 - dc) * at(r0, c0) + dc * at(r0, c0 + 1)) +
      dr * ((1 - dc) * at(r0 + 1, c0) + dc * at(r0 + 1, c0 + 1));
    const line = stationM + (endM - stationM) * share - (500 * km * km * share * (1 - share)) / gdalRadiusKm;
    least = Math.min(least, line - ground);
  }
  return least;
}

async function compareSight(): Promise<void> {
  run(
    'gdalwarp',
    '-q',
    '-overwrite',
    '-t_srs',
    'EPSG:32616',
    '-te',
    '731790',
    '4037400',
    '760950',
    '4068360',
    '-tr',
    '90',
    '90',
    '-r',
    'bilinear',
    '-ot',
    'Float32',
    'plans/terrain/hickory-gap.tif',
    file('utm.tif'),
  );
  const map = await band(file('utm.tif'));
  for (const [name, ox, oy, oz, tz] of [
    ['summit', 748035, 4041315, 10, 1.5],
    ['middle', 746415, 4052835, 1.5, 1.5],
    ['valley', 754335, 4059315, 1.5, 10],
    ['slope', 739125, 4060575, 10, 1.5],
  ] as const) {
    run(
      'gdal_viewshed',
      '-q',
      '-ox',
      `${ox}`,
      '-oy',
      `${oy}`,
      '-oz',
      `${oz}`,
      '-tz',
      `${tz}`,
      '-cc',
      '0.75',
      file('utm.tif'),
      file('seen.tif'),
    );
    const gdal = (await band(file('seen.tif'))).samples;
    const [row, column] = [Math.floor((4_068_360 - oy) / cellM), Math.floor((ox - 731_790) / cellM)];
    const grid = onEquator(map, row);
    const observer = { latitudeDeg: 0, longitudeDeg: column * grid.stepEastDeg };
    const frame = rayFrame(grid, observer, { raysPerCell: sightRaysPerCell });
    if (!frame) throw new Error('observer off the map');
    const inSight = new Uint8Array(map.samples.length);
    const settings = {
      stationAntennaM: oz,
      cellAntennaM: tz,
      earthRadiusKm: gdalRadiusKm,
    } as const;
    sweepSight(grid, frame, settings, inSight, [[0, rayCount(frame)]]);
    const stationM = frame.groundM + oz;
    const tally = { swept: 0, brute: 0, gdal: 0, agree: 0, clearCut: 0, clearCutAgree: 0 };
    for (let cell = 0; cell < inSight.length; cell++) {
      const [r, c] = [Math.floor(cell / map.columns), cell % map.columns];
      const clear = bruteClearanceM(grid, row, column, stationM, tz, r, c);
      const [bySweep, byBrute, byGdal] = [inSight[cell] === 255, clear >= 0, gdal[cell] === 255];
      if (bySweep) tally.swept++;
      if (byBrute) tally.brute++;
      if (byGdal) tally.gdal++;
      if (bySweep === byBrute) tally.agree++;
      if (Math.abs(clear) >= 5 && Math.hypot(r - row, c - column) * cellM > 5000) {
        tally.clearCut++;
        if (bySweep === byGdal) tally.clearCutAgree++;
      }
    }
    const percent = (part: number, whole: number) => `${((100 * part) / whole).toFixed(2)} %`;
    say(
      `${name}: in sight ${tally.swept} by the sweep, ${tally.brute} by brute force, ${tally.gdal} by GDAL; sweep and brute force differ in ${inSight.length - tally.agree} cells, sweep and GDAL agree where clear-cut in ${percent(tally.clearCutAgree, tally.clearCut)}`,
    );
  }
}

function seconds(program: string, ...args: readonly string[]): { readonly s: number; readonly out: string } {
  const start = process.hrtime.bigint();
  const out = run(program, ...args);
  return { s: Number(process.hrtime.bigint() - start) / 1e9, out };
}

async function compareTimes(): Promise<void> {
  buildSync({
    entryPoints: ['test/bench/reach-process.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    outfile: bundle,
    external: ['geotiff'],
    logLevel: 'error',
  });
  run(
    'gdal_translate',
    '-q',
    '-outsize',
    '3601',
    '3601',
    '-r',
    'cubic',
    file('utm.tif'),
    file('big-utm.tif'),
  );
  run(
    'gdal_translate',
    '-q',
    '-ot',
    'Float32',
    '-outsize',
    '3601',
    '3601',
    '-r',
    'cubic',
    'plans/terrain/hickory-gap.tif',
    file('big.tif'),
  );
  const times: Record<'gdal' | 'sight' | 'loss', number[]> = { gdal: [], sight: [], loss: [] };
  let memoryMib = 0;
  for (let turn = 0; turn < 5; turn++) {
    times.gdal.push(
      seconds(
        'gdal_viewshed',
        '-q',
        '-ox',
        '746370',
        '-oy',
        '4052880',
        '-oz',
        '10',
        '-tz',
        '1.5',
        '-cc',
        '0.75',
        file('big-utm.tif'),
        file('seen.tif'),
      ).s,
    );
    for (const what of ['sight', 'loss'] as const) {
      const { s, out } = seconds(process.execPath, bundle, file('big.tif'), file('ours.tif'), what);
      times[what].push(s);
      memoryMib = Math.max(memoryMib, Number(out));
    }
  }
  const median = (values: readonly number[]) =>
    values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
  const gdal = median(times.gdal);
  for (const [what, aim] of [
    ['sight', 1.5],
    ['loss', 6],
  ] as const) {
    const ours = median(times[what]);
    say(
      `${what} on 3601 x 3601 cells: ${ours.toFixed(2)} s against ${gdal.toFixed(2)} s of gdal_viewshed, ${(ours / gdal).toFixed(1)} times (aim ${aim})`,
    );
  }
  say(`memory: ${memoryMib} MiB (aim below 1024)`);
  await compareLoss();
}

/** The raster of the last run, cell by cell at random, against the profile that leads straight to the cell. */
async function compareLoss(): Promise<void> {
  const grid = await readGeotiff(new Uint8Array(readFileSync(file('big.tif'))), 'big.tif');
  const { samples } = await band(file('ours.tif'));
  const station = positionOf(grid, grid.rows >> 1, grid.columns >> 1);
  const cells = 10_000;
  let state = 1;
  const random = (count: number) => {
    state = (state * 48_271) % 2_147_483_647;
    return Math.floor((state / 2_147_483_647) * count);
  };
  const offDb: number[] = [];
  while (offDb.length < cells) {
    const [row, column] = [random(grid.rows), random(grid.columns)];
    const profile = profileTo(grid, station, row, column);
    if (profile.distancesKm.length < 3) continue;
    const { lossDb } = diffractionLoss({
      ...profile,
      startAntennaM: lossSettings.stationAntennaM,
      endAntennaM: lossSettings.cellAntennaM,
      ...lossSettings,
    });
    const freeSpaceDb = freeSpaceLossDb(
      lossSettings.frequencyHz,
      1000 * (profile.distancesKm.at(-1) ?? Number.NaN),
    );
    offDb.push(Math.abs((samples[row * grid.columns + column] ?? Number.NaN) - lossDb - freeSpaceDb));
  }
  const within = offDb.filter((off) => off <= 0.5).length / cells;
  const [worst] = offDb.toSorted((a, b) => b - a);
  say(
    `loss: ${(100 * within).toFixed(2)} % of ${cells} cells within 0.5 dB of the per-profile method (aim 99), the farthest ${worst?.toFixed(1)} dB off`,
  );
}
