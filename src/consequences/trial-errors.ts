/** Each trial of a plan beside its prediction, and what the group's own trials say of each kind of radio. */
import type { Plan, Trial } from '../plan/model.ts';
import { type TrialFit, trialFit } from '../reach/trial-fit.ts';
import type { Consequences } from './consequences.ts';
import { type Ground, type RadioPath, radioPath } from './paths.ts';
import type { PathEnd } from './wanted-paths.ts';

export interface TrialBesidePrediction {
  readonly trial: Trial;
  /** Position in the plan's list. */
  readonly index: number;
  readonly radio: string;
  readonly path: RadioPath;
}

export interface RadioTrials {
  readonly radio: string;
  readonly fit: TrialFit;
}

export interface TrialErrors {
  readonly beside: readonly TrialBesidePrediction[];
  readonly radios: readonly RadioTrials[];
  /** Trials that name no radio, channel or place from which a prediction could be made. */
  readonly withoutPrediction: readonly number[];
}

export function trialErrors(plan: Plan, consequences: Consequences, ground: Ground): TrialErrors {
  const beside: TrialBesidePrediction[] = [];
  const withoutPrediction: number[] = [];
  for (const [index, trial] of plan.trials.entries()) {
    const radio = trial.radio ?? onlyRadio(plan, trial.member);
    const wanted = radio === undefined ? undefined : pathOfTrial(plan, trial, radio);
    if (!wanted || radio === undefined || !consequences.channels.has(wanted.slot))
      withoutPrediction.push(index);
    else beside.push({ trial, index, radio, path: radioPath(plan, consequences, ground, wanted) });
  }
  const radios = [...plan.radios.keys()].flatMap((radio) => {
    const tried = beside.flatMap(({ trial, radio: with_, path }) =>
      with_ === radio && path.prediction.ok
        ? [{ marginDb: path.prediction.worse.marginDb, heard: trial.heard }]
        : [],
    );
    const fit = trialFit(tried);
    return fit ? [{ radio, fit }] : [];
  });
  return { beside, radios, withoutPrediction };
}

function onlyRadio(plan: Plan, member: string | undefined): string | undefined {
  const radios = member === undefined ? undefined : plan.members.get(member)?.radios;
  return radios?.length === 1 ? radios[0] : undefined;
}

function pathOfTrial(plan: Plan, trial: Trial, radio: string) {
  const from = plan.members.get(trial.from)?.at ?? trial.from;
  const to = endOfTrial(plan, trial.to, radio);
  const slot = trial.channel ?? (to?.kind === 'repeater' ? slotOfRepeater(plan, to.id) : undefined);
  if (
    !to ||
    slot === undefined ||
    !plan.places.has(from) ||
    !plan.places.has(to.place) ||
    !plan.radios.has(radio) ||
    from === to.place
  )
    return undefined;
  const members = trial.member === undefined ? [] : [trial.member];
  return { from: { kind: 'member' as const, place: from, radio }, to, slot, members };
}

/** A place or a member is taken to listen with the same kind of radio, since the trial names no other. */
function endOfTrial(plan: Plan, id: string, radio: string): PathEnd | undefined {
  const [repeater, digipeater, mailbox] = [
    plan.repeaters.get(id),
    plan.digipeaters.get(id),
    plan.mailboxes.get(id),
  ];
  if (repeater)
    return repeater.place === undefined ? undefined : { kind: 'repeater', id, place: repeater.place };
  if (digipeater)
    return digipeater.place === undefined ? undefined : { kind: 'digipeater', id, place: digipeater.place };
  if (mailbox) return mailbox.place === undefined ? undefined : { kind: 'mailbox', id, place: mailbox.place };
  const place = plan.members.get(id)?.at ?? id;
  return { kind: 'member', place, radio };
}

function slotOfRepeater(plan: Plan, id: string): number | undefined {
  return [...plan.channels.values()].find((channel) => channel.kind === 'repeater' && channel.repeater === id)
    ?.slot;
}
