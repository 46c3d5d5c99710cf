/** `readback ground`: the nearest spots from which a path closes, by walking time. */
import { createColors } from 'picocolors';
import type { Consequences } from '../consequences/consequences.ts';
import { type GroundFound, groundSearch, highestM } from '../consequences/ground-search.ts';
import { loadGround } from '../consequences/load-ground.ts';
import type { PathEnd, Wanted } from '../consequences/paths.ts';
import { nearest } from '../findings/nearest.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';
import { readQuantity } from '../radio/quantity.ts';
import { maidenhead } from '../reach/maidenhead.ts';
import type { Spot } from '../reach/nearest-ground.ts';
import { formatPosition } from '../reach/position.ts';
import type { ExitStatus } from './end-with.ts';
import { hasColour } from './terminal.ts';
import { wholePlan } from './whole-plan.ts';

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
  const { plan, consequences, read } = await wholePlan(file, options);
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
  if (!place) throw unknown('place', options.from, plan.places.keys());
  const to = endOf(plan, options.to);
  if (!to)
    throw unknown('station, member or place', options.to, [
      ...plan.repeaters.keys(),
      ...plan.mailboxes.keys(),
      ...plan.digipeaters.keys(),
      ...plan.members.keys(),
      ...plan.places.keys(),
    ]);
  const slots = options.channel === undefined ? slotsTo(plan, consequences, to) : [Number(options.channel)];
  const tried = slots.flatMap((slot) =>
    [...plan.radios.keys()]
      .filter((radio) => options.radio === undefined || radio === options.radio)
      .flatMap((radio) => {
        const members = consequences
          .holdersOf(radio)
          .filter((member) => consequences.use(member, radio, slot)?.may === 'transmit');
        return members.length === 0
          ? []
          : [{ slot, radio, members, power: plan.radios.get(radio)?.antenna.carried === 'mast' }];
      }),
  );
  // Whoever walks carries a hand-held; a radio at a mast stays where it is.
  const found =
    tried.find(({ radio }) =>
      ['hand', 'chest', 'belt', undefined].includes(plan.radios.get(radio)?.antenna.carried),
    ) ?? tried[0];
  if (!found) {
    throw new Refusal(
      `Nobody in this plan may transmit ${options.radio === undefined ? '' : `with ${options.radio} `}on a channel that leads to ${options.to}.`,
      'Name the channel with --channel and the radio with --radio.',
    );
  }
  const end: PathEnd = to.kind === 'member' ? { ...to, radio: found.radio } : to;
  if (end.place === place.id) throw new Refusal(`${options.to} stands at ${place.name} itself.`);
  return {
    from: { kind: 'member', place: place.id, radio: found.radio },
    to: end,
    slot: found.slot,
    members: found.members,
  };
}

function endOf(plan: Plan, id: string): PathEnd | undefined {
  for (const [kind, stations] of [
    ['repeater', plan.repeaters],
    ['mailbox', plan.mailboxes],
    ['digipeater', plan.digipeaters],
  ] as const) {
    const station = stations.get(id);
    if (station) {
      if (station.place === undefined)
        throw new Refusal(`The plan does not say where ${station.name} stands.`, 'Give it a place.');
      return { kind, id, place: station.place };
    }
  }
  const member = plan.members.get(id);
  if (member && member.at === undefined)
    throw new Refusal(
      `The plan does not say where ${member.name} usually is.`,
      'Give them a place with `at`.',
    );
  const place = member?.at ?? (plan.places.has(id) ? id : undefined);
  return place === undefined ? undefined : { kind: 'member', place, radio: '' };
}

function slotsTo(plan: Plan, consequences: Consequences, to: PathEnd): readonly number[] {
  return [...consequences.channels.values()]
    .filter(({ repeater, mode, slot, transmitHz }) => {
      if (to.kind === 'repeater') return repeater?.id === to.id;
      if (to.kind === 'mailbox') return plan.mailboxes.get(to.id)?.channel === slot;
      if (to.kind === 'digipeater') return plan.digipeaters.get(to.id)?.channel === slot;
      return repeater === undefined && mode !== 'packet' && transmitHz !== undefined;
    })
    .map(({ slot }) => slot);
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

function unknown(noun: string, id: string, known: Iterable<string>): Refusal {
  const near = nearest(id, known);
  return new Refusal(
    `There is no ${noun} ${id} in this plan.`,
    near ? `Did you mean ${near}?` : 'Ids are those of the plan file.',
  );
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
