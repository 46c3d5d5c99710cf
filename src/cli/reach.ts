/** `readback reach`: the margin to a station at every cell of the ground, as GeoTIFF and as a chart. */
import { join, relative } from 'node:path';
import { loadGround } from '../consequences/load-ground.ts';
import { reachMap } from '../consequences/reach-map.ts';
import { reachChart } from '../documents/reach-chart.ts';
import { Refusal } from '../findings/refusal.ts';
import type { SweepSettings } from '../reach/loss-sweep.ts';
import { rayFrame } from '../reach/rays.ts';
import { sightRaysPerCell } from '../reach/sight-sweep.ts';
import { chanceOf, verdictOf } from '../reach/verdict.ts';
import { writeGeotiff } from '../reach/write-geotiff.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { endOfPlan, pathFor } from './path-for.ts';
import { lines } from './print-lines.ts';
import { sweep } from './sweep.ts';
import { columnsOf, displayWidth } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface ReachOptions {
  readonly station: string;
  readonly radio?: string;
  readonly channel?: string;
  readonly out?: string;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
}

function cautionOf({ cellTreesM }: SweepSettings): string {
  const where = cellTreesM === undefined ? 'in the open' : `under trees of ${cellTreesM} m (ITU-R P.833)`;
  return `A planning aid: medians ${where}, by ITU-R P.526 over the elevation files. Only a trial proves a path.`;
}

export async function reach(file: string, options: ReachOptions): Promise<ExitStatus> {
  const { plan, consequences, read, file: planFile } = await loadSubject(file, options);
  const { radio, slot } = pathFor(plan, consequences, options.station, options);
  const station = endOfPlan(plan, options.station, radio);
  const map = reachMap(plan, consequences, await loadGround(plan, read), station, radio, slot);
  if (!map.ok)
    throw new Refusal(
      `This cannot be reckoned: ${map.reason}`,
      'Name elevation files that cover the area under `terrain`.',
    );
  const { grid, settings, greatestLossDb, spreadDb } = map;
  const caution = cautionOf(settings);
  const stated = map.elevationM === undefined ? {} : { elevationM: map.elevationM };
  const frame = rayFrame(grid, map.station, stated);
  const wide = rayFrame(grid, map.station, { ...stated, raysPerCell: sightRaysPerCell });
  if (!frame || !wide) throw new Refusal(`${grid.name} has no ground at the station.`);
  const { lossDb, inSight } = await sweep(grid, frame, wide, settings);

  const sightShare = inSight.reduce((seen, mark) => seen + (mark > 0 ? 1 : 0), 0) / inSight.length;

  const marginDb = lossDb.map((loss) => greatestLossDb - loss);
  const counts = { solid: 0, likely: 0, doubtful: 0, no: 0, unknown: 0 };
  for (const margin of marginDb)
    counts[Number.isNaN(margin) ? 'unknown' : verdictOf(chanceOf(margin, spreadDb))]++;
  const name = plan.places.get(station.place)?.name ?? station.place;
  const title = station.kind === 'member' ? name : `${nameOf(plan, station.kind, station.id)} (${name})`;
  const svg = reachChart({
    grid,
    lossDb,
    greatestLossDb,
    spreadDb,
    title: `From where ${title} is reached`,
    lines: [
      `${plan.radios.get(radio)?.name ?? radio}, slot ${slot} ${plan.channels.get(slot)?.name ?? ''}; ${plan.title}, revision ${plan.revision}`,
    ],
    station: { name, at: map.station },
    places: [...plan.places.values()]
      .filter(({ id }) => id !== station.place)
      .map(({ name: shown, at }) => ({ name: shown, at })),
    words: {
      solid: 'solid',
      likely: 'likely',
      doubtful: 'doubtful',
      no: 'no',
      unknown: 'no data',
      north: 'N',
    },
    caution,
  });
  const stem = `${options.station}-${radio}`;
  const folder = options.out ?? join('out', planFile.stem, 'reach');
  const files = new Map<string, Uint8Array>([
    [`${stem}.tif`, writeGeotiff({ ...grid, samples: marginDb, voidValue: Number.NaN })],
    [`${stem}.svg`, new TextEncoder().encode(svg)],
  ]);
  await writeAll(folder, files);
  const shown = relative(process.cwd(), folder) || '.';
  const shares = Object.fromEntries(
    Object.entries(counts).map(([verdict, cells]) => [verdict, cells / marginDb.length]),
  );
  if (options.json) {
    process.stdout.write(
      `${JSON.stringify({ station: options.station, radio, slot, greatestLossDb, spreadDb, shares, inSight: sightShare, files: [...files.keys()].map((each) => join(shown, each)) }, null, 2)}\n`,
    );
  } else {
    const percent = Object.entries(shares)
      .filter(([, share]) => share > 0)
      .map(([verdict, share]) => `${verdict} ${(share * 100).toFixed(0)} %`);
    const print = lines(columnsOf(process.stdout), await displayWidth([title]));
    const summary = `${title}, ${radio}, slot ${slot}: of ${grid.columns} by ${grid.rows} cells ${percent.join(', ')}; in line of sight ${(sightShare * 100).toFixed(0)} %.`;
    // A path stays on one line, whole, so that it can be copied.
    const written = [...files.keys()].map((each) => `  ${join(shown, each)}`);
    process.stdout.write(`${[print.say(summary), ...written, print.say(caution)].join('\n')}\n`);
  }
  return 0;
}

function nameOf(
  plan: Parameters<typeof endOfPlan>[0],
  kind: 'repeater' | 'digipeater' | 'mailbox',
  id: string,
): string {
  const stations =
    kind === 'repeater' ? plan.repeaters : kind === 'mailbox' ? plan.mailboxes : plan.digipeaters;
  return stations.get(id)?.name ?? id;
}
