/** `readback paths`: each radio path of a plan, predicted, with what was really heard beside it. */
import { createColors } from 'picocolors';
import { loadGround } from '../consequences/load-ground.ts';
import { pathsOf, type RadioPath } from '../consequences/paths.ts';
import { type TrialErrors, trialErrors } from '../consequences/trial-errors.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';
import type { ExitStatus } from './end-with.ts';
import { loadSubject } from './load-subject.ts';
import { pathJson } from './path-json.ts';
import { hasColour } from './terminal.ts';

export interface PathsOptions {
  readonly from?: string;
  readonly to?: string;
  readonly json?: true;
  readonly trials?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

const caution =
  'Predictions are planning aids, medians with the spread shown; only a trial proves a path.\n' +
  'Margins are over what a listener needs, in the worse direction. Bearings are true, then magnetic.';

export async function paths(file: string, options: PathsOptions): Promise<ExitStatus> {
  const { plan, consequences, read } = await loadSubject(file, options);
  const ground = await loadGround(plan, read);
  if (options.trials) {
    const errors = trialErrors(plan, consequences, ground);
    if (errors.beside.length === 0)
      throw new Refusal(
        'No trial of this plan can be held against a prediction.',
        '`readback log` adds one.',
      );
    process.stdout.write(
      options.json
        ? `${JSON.stringify(trialsJson(file, plan, errors), null, 2)}\n`
        : trialTable(plan, errors, options),
    );
    return 0;
  }
  const all = pathsOf(plan, consequences, ground);
  const found = all.filter(({ from, to }) => matches(from, options.from) && matches(to, options.to));
  if (found.length === 0) {
    throw new Refusal(
      all.length === 0 ? 'No path follows from this plan.' : 'No path of this plan is between those.',
      all.length === 0 ? 'Members need places, and stations too.' : '`readback paths PLAN` lists them all.',
    );
  }
  process.stdout.write(
    options.json
      ? `${JSON.stringify({ plan: file, revision: plan.revision, paths: found.map(pathJson) }, null, 2)}\n`
      : table(plan, found, options),
  );
  return 0;
}

function matches(end: PathEnd, wanted: string | undefined): boolean {
  return (
    wanted === undefined ||
    end.place === wanted ||
    (end.kind === 'member' ? end.radio === wanted : end.id === wanted)
  );
}

function table(plan: Plan, found: readonly RadioPath[], options: PathsOptions): string {
  const { bold, dim, red, yellow, green } = createColors(hasColour(process.stdout, options));
  const paint = { solid: green, likely: green, doubtful: yellow, no: red };
  const groups = new Map<string, RadioPath[]>();
  for (const path of found) {
    const heading = endName(plan, path.from);
    groups.set(heading, [...(groups.get(heading) ?? []), path]);
  }
  const widest = Math.min(30, Math.max(...found.map(({ to }) => endName(plan, to).length)));
  const blocks = [...groups].map(([heading, paths]) => {
    const lines = paths.map((path) => {
      const name = endName(plan, path.to);
      const start = `  ${(name.length > widest ? `${name.slice(0, widest - 1)}…` : name).padEnd(widest)} `;
      const { prediction } = path;
      if (!prediction.ok) return `${start} ${prediction.reason}`;
      const { worse } = prediction;
      const compassText = `${degrees(prediction.bearingDeg)}${prediction.magneticBearingDeg === undefined ? '' : `/${degrees(prediction.magneticBearingDeg)}`}`;
      const figures = `${formatDistance(prediction.distanceM).padStart(8)} ${compassText.padStart(9)} ${signed(worse.marginDb).padStart(4)} dB ±${Math.round(worse.spreadDb)}`;
      const trial = path.trials.at(-1);
      const tried = trial === undefined ? dim('untried') : `${trial.heard} ${trial.date.slice(5)}`;
      return `${start}${figures} ${paint[worse.verdict](worse.verdict.padEnd(8))} ${tried}`;
    });
    const members = [...new Set(paths.flatMap((path) => path.members))].map(
      (id) => plan.members.get(id)?.name.split(' ')[0] ?? id,
    );
    return [bold(heading) + dim(members.length > 0 ? `  ${members.join(', ')}` : ''), ...lines].join('\n');
  });
  return `${blocks.join('\n\n')}\n\n${dim(caution)}\n`;
}

/** Each trial beside its prediction; then, for each kind of radio, what the group's own trials say. */
function trialTable(
  plan: Plan,
  { beside, radios, withoutPrediction }: TrialErrors,
  options: PathsOptions,
): string {
  const { bold, dim } = createColors(hasColour(process.stdout, options));
  const lines = beside.map(({ trial, radio, path }) => {
    const { prediction } = path;
    const figures = prediction.ok
      ? `${signed(prediction.worse.marginDb).padStart(4)} dB ±${String(Math.round(prediction.worse.spreadDb)).padEnd(2)} ${prediction.worse.verdict.padEnd(8)}`
      : prediction.reason;
    const where = `${plan.places.get(trial.from)?.name ?? trial.from} to ${endName(plan, path.to).split(',')[0]}, ${radio}`;
    return `  ${trial.date}  ${where}\n    predicted ${figures}  heard ${bold(trial.heard)}${trial.report === undefined ? '' : dim(` (${trial.report})`)}`;
  });
  const fits = radios.map(({ radio, fit }) => {
    const spread = fit.spreadFitted ? `spread ${fit.spreadDb.toFixed(1)} dB` : `too few for a spread`;
    return `  ${radio}: ${fit.trials} ${fit.trials === 1 ? 'trial' : 'trials'}, mean error ${signed(fit.meanErrorDb)} dB, ${spread}; offered correction ${signed(fit.offeredDb)} dB`;
  });
  const left =
    withoutPrediction.length === 0
      ? ''
      : `\n${withoutPrediction.length} without a prediction: they name no radio, channel or known place.\n`;
  return `${bold('Trials beside their predictions')}\n${lines.join('\n')}\n\n${bold('By kind of radio')}\n${fits.join('\n')}\n${left}\n${dim(offer)}\n`;
}

const offer =
  'A correction is offered, never applied: it may stand for an antenna gain, a height or a\n' +
  'noise level that the plan has wrong. Change that in the plan if the cause is known.';

function trialsJson(file: string, plan: Plan, { beside, radios, withoutPrediction }: TrialErrors): object {
  return {
    plan: file,
    revision: plan.revision,
    trials: beside.map(({ trial, index, radio, path }) => ({
      index,
      date: trial.date,
      radio,
      heard: trial.heard,
      predicted: pathJson(path),
    })),
    radios: radios.map(({ radio, fit }) => ({ radio, ...fit })),
    withoutPrediction,
  };
}

function endName(plan: Plan, end: PathEnd): string {
  const place = plan.places.get(end.place)?.name ?? end.place;
  if (end.kind === 'member') return `${place}, ${end.radio}`;
  const stations =
    end.kind === 'repeater' ? plan.repeaters : end.kind === 'mailbox' ? plan.mailboxes : plan.digipeaters;
  return stations.get(end.id)?.name ?? end.id;
}

function degrees(bearing: number): string {
  return `${String(Math.round(bearing) % 360).padStart(3, '0')}\u00b0`;
}

function signed(decibels: number): string {
  const rounded = Math.round(decibels);
  return rounded > 0 ? `+${rounded}` : String(rounded);
}
