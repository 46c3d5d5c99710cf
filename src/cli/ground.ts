/** `readback ground`: the nearest spots from which a path closes, by walking time. */
import { createColors } from 'picocolors';
import type { Consequences } from '../consequences/consequences.ts';
import { type GroundFound, groundSearch, highestM } from '../consequences/ground-search.ts';
import { loadGround } from '../consequences/load-ground.ts';
import type { Wanted } from '../consequences/wanted-paths.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';
import { readQuantity } from '../radio/quantity.ts';
import { maidenhead } from '../reach/maidenhead.ts';
import type { Spot } from '../reach/nearest-ground.ts';
import { formatPosition } from '../reach/position.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { endOfPlan, pathFor, unknownId } from './path-for.ts';
import { hasColour } from './terminal.ts';

export interface GroundOptions {
  readonly from: string;
  readonly to: string;
  readonly radio?: string;
  readonly channel?: string;
  readonly chance: string;
  readonly within: string;
  readonly onPaths?: true;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function ground(file: string, options: GroundOptions): Promise<ExitStatus> {
  const { plan, consequences, read } = await loadSubject(file, options);
  const path = wantedPath(plan, consequences, options);
  const chance = share(options.chance);
  const mostWalkS = duration(options.within);
  const outcome = groundSearch(plan, consequences, await loadGround(plan, read), {
    path,
    chance,
    mostWalkS,
    onPaths: options.onPaths === true,
    count: 5,
  });
  if (!outcome.ok)
    throw new Refusal(
      `This cannot be reckoned: ${outcome.reason}`,
      'Name elevation files that cover the area under `terrain`.',
    );
  process.stdout.write(
    options.json
      ? `${JSON.stringify(asJson(outcome, chance), null, 2)}\n`
      : text(plan, outcome, chance, mostWalkS, options),
  );
  return 0;
}

function wantedPath(plan: Plan, consequences: Consequences, options: GroundOptions): Wanted {
  const place = plan.places.get(options.from);
  if (!place) throw unknownId('place', options.from, plan.places.keys());
  const { radio, slot, members } = pathFor(plan, consequences, options.to, options);
  const to = endOfPlan(plan, options.to, radio);
  if (to.place === place.id) throw new Refusal(`${options.to} stands at ${place.name} itself.`);
  return { from: { kind: 'member', place: place.id, radio }, to, slot, members };
}

function text(
  plan: Plan,
  { path, worse, answer, raisedToM }: GroundFound,
  chance: number,
  mostWalkS: number,
  options: GroundOptions,
): string {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const [from, to] = [plan.places.get(path.from.place)?.name, options.to];
  const radio = path.from.kind === 'member' ? path.from.radio : '';
  const channel = plan.channels.get(path.slot)?.name ?? '';
  const wanted = `${Math.round(chance * 100)} %`;
  const lines = [
    bold(`${from} to ${stationName(plan, to)}, ${radio}, slot ${path.slot} ${channel}`),
    `Here: ${worse.verdict}, margin ${Math.round(worse.marginDb)} dB, give or take ${Math.round(worse.spreadDb)}; chance ${percent(worse.probability)}.`,
  ];
  const { prediction } = path;
  if (prediction.ok && prediction.obstacle) {
    const { obstacle } = prediction;
    const above = Math.round(obstacle.aboveLineM);
    lines.push(
      `In the way: ground of ${Math.round(obstacle.groundM)} m, ${formatDistance(obstacle.alongKm * 1000)} along, ${above >= 0 ? `${above} m above` : `${-above} m below`} the line of sight.`,
    );
  }
  const last = path.trials.at(-1);
  lines.push(
    last
      ? `Tried ${last.date}: ${last.heard}${last.report === undefined ? '' : ` (${last.report})`}.`
      : 'Never tried from here.',
  );
  lines.push(
    raisedToM === undefined
      ? `No antenna up to ${highestM} m above the ground would give ${wanted} here.`
      : `An antenna ${raisedToM.toFixed(1)} m above the ground would give ${wanted} here.`,
  );
  if (!answer.ok) lines.push('', answer.reason);
  else if (worse.probability >= chance)
    lines.push('', `Nobody need walk: the path closes here with ${wanted}.`);
  else if (answer.spots.length === 0) {
    lines.push(
      '',
      `No ground within ${minutes(mostWalkS)} gives ${wanted}. The best there is:`,
      spotLine(answer.best, 1),
    );
  } else
    lines.push(
      '',
      bold(`Nearest ground with ${wanted}, by walking time`),
      ...answer.spots.map((spot, index) => spotLine(spot, index + 1)),
    );
  lines.push(
    '',
    dim(
      'Walking by Tobler (1993), off paths at three fifths of his speed, unless --on-paths;\nno map of cliffs, rivers or fences was asked. Predictions are aids: try it there.',
    ),
  );
  return `${lines.join('\n')}\n`;
}

function stationName(plan: Plan, id: string): string {
  return (
    (
      plan.repeaters.get(id) ??
      plan.mailboxes.get(id) ??
      plan.digipeaters.get(id) ??
      plan.members.get(id) ??
      plan.places.get(id)
    )?.name ?? id
  );
}

function spotLine(spot: Spot, number: number): string {
  const walk = `${minutes(spot.walkS).padStart(6)} ${formatDistance(spot.walkM).padStart(7)}, climb ${String(Math.round(spot.climbM)).padStart(3)} m`;
  return `  ${number} ${walk}  ${formatPosition(spot.position)}  ${maidenhead(spot.position, 4)}  +${Math.round(spot.marginDb)} dB ${percent(spot.probability)}`.replace(
    '+-',
    '-',
  );
}

function minutes(seconds: number): string {
  return `${Math.round(seconds / 60)} min`;
}

function percent(chance: number): string {
  return `${Math.min(99, Math.round(chance * 100))} %`;
}

function share(written: string): number {
  const reading = readQuantity(/%$/.test(written) ? written : `${written}%`, 'ratio');
  if (!reading.ok || reading.value <= 0 || reading.value >= 1)
    throw new Refusal(`--chance ${written} is no chance.`, 'Write it in percent, such as 90.');
  return reading.value;
}

function duration(written: string): number {
  const reading = readQuantity(written, 'duration');
  if (!reading.ok || reading.value <= 0 || reading.value > 86_400)
    throw new Refusal(`--within ${written} is no time to walk.`, 'Write it like 90 min or 2 h.');
  return reading.value;
}

function asJson({ path, worse, answer, raisedToM }: GroundFound, chance: number): object {
  const spot = ({ position, groundM, walkS, walkM, climbM, marginDb, probability }: Spot) => ({
    latitudeDeg: Number(position.latitudeDeg.toFixed(5)),
    longitudeDeg: Number(position.longitudeDeg.toFixed(5)),
    locator: maidenhead(position, 4),
    groundM: Math.round(groundM),
    walkS: Math.round(walkS),
    walkM: Math.round(walkM),
    climbM: Math.round(climbM),
    marginDb: Number(marginDb.toFixed(1)),
    probability: Number(probability.toFixed(3)),
  });
  return {
    from: path.from,
    to: path.to,
    slot: path.slot,
    wanted: chance,
    here: {
      verdict: worse.verdict,
      marginDb: Number(worse.marginDb.toFixed(1)),
      probability: Number(worse.probability.toFixed(3)),
    },
    raisedToM: raisedToM ?? null,
    ...(answer.ok ? { spots: answer.spots.map(spot), best: spot(answer.best) } : { noData: answer.reason }),
  };
}
