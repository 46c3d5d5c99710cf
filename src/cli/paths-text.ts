/** The table of `readback paths`: each place and radio with what they should reach, and what was really heard. */
import { createColors } from 'picocolors';
import type { RadioPath } from '../consequences/paths.ts';
import { shortName } from '../consequences/short-names.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import type { DisplayWidth } from '../findings/display-width.ts';
import { wrapText } from '../findings/wrap-text.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';
import { lines } from './print-lines.ts';
import { columnsOf, displayWidth, hasColour, type TerminalOptions } from './terminal.ts';

const caution =
  'Predictions are planning aids, medians with the spread shown; only a trial proves a path. Margins are over what a listener needs, in the worse direction. Bearings are true, then magnetic.';

/** What to do where rows lack elevation data. */
export const missingRemedy =
  'Name elevation files that cover these places under terrain.files, or type the heights along a path from a map under terrain.profiles.';

/** @param missing sentences on what could not be predicted */
export async function pathsText(
  plan: Plan,
  found: readonly RadioPath[],
  missing: readonly string[],
  options: TerminalOptions,
): Promise<string> {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const columns = columnsOf(process.stdout);
  const widthOf = await displayWidth(
    [...plan.places, ...plan.repeaters, ...plan.mailboxes, ...plan.digipeaters, ...plan.members].map(
      ([, { name }]) => name,
    ),
  );
  const print = lines(columns, widthOf);
  const groups = new Map<string, RadioPath[]>();
  for (const path of found) {
    const heading = endName(plan, path.from);
    groups.set(heading, [...(groups.get(heading) ?? []), path]);
  }
  const names = new Map([...groups.values()].flatMap((paths) => rowNames(plan, paths)));
  const row = rowPrinter(names, columns, widthOf, options);
  const blocks = [...groups].map(([heading, paths]) => {
    const members = [...new Set(paths.flatMap((path) => path.members))]
      .map((id) => shortName(plan, id))
      .join(', ');
    const beside = widthOf(heading) + 2 + widthOf(members) <= columns;
    const who = beside ? `  ${members}` : `\n${print.say(members, 4)}`;
    return [bold(heading) + (members === '' ? '' : dim(who)), ...paths.map(row)].join('\n');
  });
  if (missing.length > 0) blocks.push(print.say([...missing, missingRemedy].join(' ')));
  return `${blocks.join('\n\n')}\n\n${dim(print.say(caution))}\n`;
}

/** What each path of one place and radio leads to; with the slot where it leads there on several. */
function rowNames(plan: Plan, paths: readonly RadioPath[]): [RadioPath, string][] {
  const ends = paths.map((path) => endName(plan, path.to));
  return paths.map((path, index) => {
    const end = ends[index] ?? '';
    return [path, ends.indexOf(end) === ends.lastIndexOf(end) ? end : `${end}, slot ${path.slot}`];
  });
}

function rowPrinter(
  names: ReadonlyMap<RadioPath, string>,
  columns: number,
  widthOf: DisplayWidth,
  options: TerminalOptions,
): (path: RadioPath) => string {
  const { dim, red, yellow, green } = createColors(hasColour(process.stdout, options));
  const paint = { solid: green, likely: green, doubtful: yellow, no: red };
  // The figures, the verdict and "untried" take 50 columns.
  const most = Math.max(12, Math.min(30, columns - 50));
  const widest = Math.min(most, Math.max(...[...names.values()].map(widthOf)));
  return (path) => {
    const { prediction, trials } = path;
    const name = names.get(path) ?? '';
    const shown = widthOf(name) > widest ? `${name.slice(0, widest - 1)}…` : name;
    const start = `  ${shown}${' '.repeat(Math.max(0, widest - widthOf(shown)))} `;
    const trial = trials.at(-1);
    if (!prediction.ok) {
      const heard = trial ? ` Heard on ${trial.date.slice(5)}: ${trial.heard}.` : '';
      const below = ' '.repeat(widest + 4);
      return wrapText(prediction.reason + heard, columns - below.length, widthOf)
        .map((line, index) => (index === 0 ? `${start} ${line}` : `${below}${line}`))
        .join('\n');
    }
    const { worse, distanceM, bearingDeg, magneticBearingDeg } = prediction;
    const bearings = `${degrees(bearingDeg)}${magneticBearingDeg === undefined ? '' : `/${degrees(magneticBearingDeg)}`}`;
    const figures = `${start}${formatDistance(distanceM).padStart(8)} ${bearings.padStart(9)} ${marginText(worse)} `;
    const verdict = paint[worse.verdict](worse.verdict.padEnd(8));
    if (!trial) return `${figures}${verdict} ${dim('untried')}`;
    const heard = `${trial.heard} ${trial.date.slice(5)}`;
    return widest + 43 + heard.length <= columns
      ? `${figures}${verdict} ${heard}`
      : `${figures}${paint[worse.verdict](worse.verdict)}\n${`heard ${heard}`.padStart(columns)}`;
  };
}

/** `+17 dB ±9 `, always as wide, so that what stands after it lines up. */
export function marginText({
  marginDb,
  spreadDb,
}: {
  readonly marginDb: number;
  readonly spreadDb: number;
}): string {
  return `${signed(marginDb).padStart(4)} dB ±${String(Math.round(spreadDb)).padEnd(2)}`;
}

export function endName(plan: Plan, end: PathEnd): string {
  const place = plan.places.get(end.place)?.name ?? end.place;
  if (end.kind === 'member') return `${place}, ${end.radio}`;
  const stations =
    end.kind === 'repeater' ? plan.repeaters : end.kind === 'mailbox' ? plan.mailboxes : plan.digipeaters;
  return stations.get(end.id)?.name ?? end.id;
}

export function signed(decibels: number): string {
  const rounded = Math.round(decibels);
  return rounded > 0 ? `+${rounded}` : String(rounded);
}

function degrees(bearing: number): string {
  return `${String(Math.round(bearing) % 360).padStart(3, '0')}\u00b0`;
}
