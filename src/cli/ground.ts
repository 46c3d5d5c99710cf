/** `readback ground`: the nearest spots from which a path closes, by walking time. */
import type { Consequences } from '../consequences/consequences.ts';
import { type GroundFound, groundSearch } from '../consequences/ground-search.ts';
import { loadGround } from '../consequences/load-ground.ts';
import type { Wanted } from '../consequences/wanted-paths.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { readQuantity } from '../radio/quantity.ts';
import { maidenhead } from '../reach/maidenhead.ts';
import type { Spot } from '../reach/nearest-ground.ts';
import type { ExitStatus } from './end-with.ts';
import { groundText } from './ground-text.ts';
import { loadSubject } from './load-subject.ts';
import { endOfPlan, pathFor, unknownId } from './path-for.ts';

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
      : await groundText(plan, outcome, { to: options.to, chance, mostWalkS }, options),
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

function asJson({ path, worse, answer, overruledBy, raisedToM }: GroundFound, chance: number): object {
  const last = path.trials.at(-1);
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
    tried: last
      ? { date: last.date, heard: last.heard, ...(last.report !== undefined && { report: last.report }) }
      : null,
    tooHopeful: overruledBy !== undefined,
    raisedToM: raisedToM ?? null,
    ...(answer.ok ? { spots: answer.spots.map(spot), best: spot(answer.best) } : { noData: answer.reason }),
  };
}
