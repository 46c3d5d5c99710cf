/** The predicted paths as a table by where they start, with what was heard, and a picture of the ground under each. */
import type { Consequences } from '../../consequences/consequences.ts';
import type { RadioPath } from '../../consequences/paths.ts';
import { shortName } from '../../consequences/short-names.ts';
import type { PathEnd } from '../../consequences/wanted-paths.ts';
import type { Plan } from '../../plan/model.ts';
import { formatDistance } from '../../radio/format-quantity.ts';
import type { Stretch } from '../../reach/profile.ts';
import { shortDate } from '../figures.ts';
import type { Scene } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import type { Words } from '../words.ts';
import { pathProfile } from './path-profile.ts';
import { placeName } from './stations.ts';

export interface PathGroup {
  readonly from: string;
  /** First names of those who would use them. */
  readonly members: string;
  readonly paths: readonly PathRow[];
}

export interface PathRow {
  readonly to: string;
  readonly slot: number;
  readonly distance: string;
  /** True, then magnetic where a model covers the date. */
  readonly bearing: string;
  /** With its spread, `12 ± 9`; empty where no prediction could be made. */
  readonly margin: string;
  readonly verdict: string;
  readonly tried: string;
  /** Why there is no prediction; empty where there is one. */
  readonly reason: string;
}

export interface ProfilePicture {
  readonly figure: string;
  readonly caption: string;
}

export function pathGroups(plan: Plan, paths: readonly RadioPath[], words: Words): readonly PathGroup[] {
  const groups = new Map<string, RadioPath[]>();
  for (const path of paths) {
    const key = endName(plan, path.from);
    groups.set(key, [...(groups.get(key) ?? []), path]);
  }
  return [...groups].map(([from, some]) => ({
    from,
    members: [...new Set(some.flatMap((path) => path.members))].map((id) => shortName(plan, id)).join(', '),
    paths: some.map((path) => pathRow(plan, path, words)),
  }));
}

function pathRow(plan: Plan, path: RadioPath, words: Words): PathRow {
  const { prediction } = path;
  const trial = path.trials.at(-1);
  const magnetic =
    prediction.magneticBearingDeg === undefined ? '' : ` / ${degrees(prediction.magneticBearingDeg)}`;
  return {
    to: endName(plan, path.to),
    slot: path.slot,
    distance: formatDistance(prediction.distanceM),
    bearing: `${degrees(prediction.bearingDeg)}${magnetic}`,
    margin: prediction.ok
      ? `${signed(prediction.worse.marginDb)} ± ${Math.round(prediction.worse.spreadDb)}`
      : '',
    verdict: prediction.ok ? words.verdict[prediction.worse.verdict] : '',
    tried: trial === undefined ? '' : `${words.heard[trial.heard]}, ${shortDate(trial.date, words)}`,
    reason: prediction.ok ? '' : whyNot(prediction, words),
  };
}

function whyNot(
  { gap, distanceM }: { readonly gap?: Stretch; readonly distanceM: number },
  words: Words,
): string {
  const km = (value: number) => value.toFixed(1);
  return gap === undefined
    ? words.neitherTransmits
    : words.noElevation(km(gap.fromKm), km(gap.toKm), km(distanceM / 1000));
}

/** One picture for each pair of places: of several stations there, the one with the best chance. */
export function profilePictures(
  plan: Plan,
  consequences: Consequences,
  paths: readonly RadioPath[],
  words: Words,
  measure: Measure,
): { readonly pictures: readonly ProfilePicture[]; readonly figures: ReadonlyMap<string, Scene> } {
  const best = new Map<string, RadioPath>();
  for (const path of paths) {
    if (path.profile === undefined || !path.prediction.ok) continue;
    const key = [path.from.place, path.to.place].toSorted().join(' ');
    const known = best.get(key);
    if (known === undefined || chance(path) > chance(known)) best.set(key, path);
  }
  const figures = new Map<string, Scene>();
  const pictures = [...best.values()].map((path, index) => {
    const figure = `profile-${index + 1}`;
    const on = consequences.channels.get(path.slot);
    const verdict = path.prediction.ok ? words.verdict[path.prediction.worse.verdict] : '';
    const caption = `${endName(plan, path.from)} – ${endName(plan, path.to)}: ${formatDistance(path.prediction.distanceM)}, ${verdict}`;
    if (path.profile !== undefined)
      figures.set(
        figure,
        pathProfile(
          path.profile,
          path,
          on?.transmitHz ?? on?.receiveHz ?? 0,
          words.figure.profile(placeName(plan, path.from.place), placeName(plan, path.to.place), verdict),
          measure,
        ),
      );
    return { figure, caption };
  });
  return { pictures, figures };
}

function chance(path: RadioPath): number {
  return path.prediction.ok ? path.prediction.worse.probability : 0;
}

function endName(plan: Plan, end: PathEnd): string {
  if (end.kind === 'member')
    return `${placeName(plan, end.place)}, ${plan.radios.get(end.radio)?.name ?? end.radio}`;
  const stations = { repeater: plan.repeaters, digipeater: plan.digipeaters, mailbox: plan.mailboxes }[
    end.kind
  ];
  return stations.get(end.id)?.name ?? end.id;
}

function degrees(value: number): string {
  return `${String(Math.round(value) % 360).padStart(3, '0')}°`;
}

function signed(value: number): string {
  const whole = Math.round(value);
  return whole < 0 ? `\u2212${-whole}` : `+${whole}`;
}
