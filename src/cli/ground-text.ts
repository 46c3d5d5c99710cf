/** What `readback ground` says to people: how it stands here, what was tried, and where to walk. */
import { createColors } from 'picocolors';
import { clearlyBetterDb, type GroundFound, highestM, wasRead } from '../consequences/ground-search.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';
import { maidenhead } from '../reach/maidenhead.ts';
import type { Spot } from '../reach/nearest-ground.ts';
import { formatPosition } from '../reach/position.ts';
import { type Lines, lines } from './print-lines.ts';
import { columnsOf, displayWidth, hasColour, type TerminalOptions } from './terminal.ts';

export interface GroundAsked {
  /** Id of whom they want to reach. */
  readonly to: string;
  /** Chance wanted, 0 … 1. */
  readonly chance: number;
  readonly mostWalkS: number;
}

export async function groundText(
  plan: Plan,
  found: GroundFound,
  asked: GroundAsked,
  options: TerminalOptions,
): Promise<string> {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const { path } = found;
  const from = plan.places.get(path.from.place)?.name ?? path.from.place;
  const to = stationName(plan, asked.to);
  const radio = path.from.kind === 'member' ? path.from.radio : '';
  const channel = plan.channels.get(path.slot)?.name ?? '';
  const report = path.trials.at(-1)?.report ?? '';
  const print = lines(columnsOf(process.stdout), await displayWidth([from, to, channel, report]));
  const blocks = [
    [
      bold(print.say(`${from} to ${to}, ${radio}, slot ${path.slot} ${channel}`, 0, 2)),
      ...here(found, asked).map((sentence) => print.say(sentence, 0, 2)),
    ].join('\n'),
    whereToWalk(found, asked, print, bold),
    dim(
      print.say(
        'Walking by Tobler (1993), off paths at three fifths of his speed, unless --on-paths; no map of cliffs, rivers or fences was asked. Predictions are aids: try it there.',
      ),
    ),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function here({ path, worse, raisedToM }: GroundFound, { chance }: GroundAsked): readonly string[] {
  const sentences = [
    `Here: ${worse.verdict}, margin ${Math.round(worse.marginDb)} dB, give or take ${Math.round(worse.spreadDb)}; chance ${percent(worse.probability)}.`,
  ];
  const { prediction } = path;
  if (prediction.ok && prediction.obstacle) {
    const { obstacle } = prediction;
    const above = Math.round(obstacle.aboveLineM);
    sentences.push(
      `In the way: ground of ${Math.round(obstacle.groundM)} m, ${formatDistance(obstacle.alongKm * 1000)} along, ${above >= 0 ? `${above} m above` : `${-above} m below`} the line of sight.`,
    );
  }
  const last = path.trials.at(-1);
  sentences.push(
    last
      ? `Tried ${last.date}: ${last.heard}${last.report === undefined ? '' : ` (${last.report})`}.`
      : 'Never tried from here.',
  );
  // Where the path is predicted to close, the antenna as it is carried would do: no advice.
  if (worse.probability < chance && raisedToM !== path.heightsM.from) {
    sentences.push(
      raisedToM === undefined
        ? `No antenna up to ${highestM} m above the ground would give ${percent(chance)} here.`
        : `An antenna ${raisedToM.toFixed(1)} m above the ground would give ${percent(chance)} here.`,
    );
  }
  return sentences;
}

function whereToWalk(
  { path, worse, answer, overruledBy }: GroundFound,
  { chance, mostWalkS }: GroundAsked,
  print: Lines,
  bold: (text: string) => string,
): string {
  const wanted = percent(chance);
  const within = minutes(mostWalkS);
  if (overruledBy) {
    const heard = overruledBy.heard === 'nothing' ? 'heard nothing' : 'heard it broken';
    const opening = print.say(
      `Predicted to close here with ${wanted}, but the trial of ${overruledBy.date} ${heard}: the prediction is too hopeful here.`,
    );
    if (!answer.ok) return `${opening}\n\n${print.say(answer.reason)}`;
    // No chance is shown, since it would be of the prediction that was just found too hopeful.
    const spots = answer.spots.map((each, index) => spotLine(each, index + 1));
    if (spots.length > 0) {
      const heading = `Nearest ground with ${clearlyBetterDb} dB more than here, by walking time`;
      return `${opening}\n\n${[bold(print.say(heading)), ...spots].join('\n')}`;
    }
    const none = `No ground within ${within} has ${clearlyBetterDb} dB more than here.`;
    return answer.best.walkS === 0
      ? `${opening}\n\n${print.say(`${none} None is better than here.`)}`
      : `${opening}\n\n${print.say(`${none} The best there is:`)}\n${spotLine(answer.best, 1)}`;
  }
  if (!answer.ok) return print.say(answer.reason);
  if (worse.probability >= chance) return print.say(`Nobody need walk: the path closes here with ${wanted}.`);
  const last = path.trials.at(-1);
  const opening =
    last && wasRead(last)
      ? `${print.say(`Not predicted to close here with ${wanted}, but ${last.heard} on ${last.date}: call from here before anyone walks.`)}\n\n`
      : '';
  const spot = (each: Spot, index: number) => `${spotLine(each, index + 1)} ${percent(each.probability)}`;
  if (answer.spots.length === 0)
    return `${opening}${print.say(`No ground within ${within} gives ${wanted}. The best there is:`)}\n${spot(answer.best, 0)}`;
  return `${opening}${[
    bold(print.say(`Nearest ground with ${wanted}, by walking time`)),
    ...answer.spots.map(spot),
  ].join('\n')}`;
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
  return `  ${number} ${walk}  ${formatPosition(spot.position)}  ${maidenhead(spot.position, 4)}  ${decibels(spot.marginDb)}`;
}

function decibels(db: number): string {
  const rounded = Math.round(db);
  return `${rounded < 0 ? rounded : `+${rounded}`} dB`;
}

function minutes(seconds: number): string {
  return `${Math.round(seconds / 60)} min`;
}

function percent(chance: number): string {
  return `${Math.min(99, Math.round(chance * 100))} %`;
}
