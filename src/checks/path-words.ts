/** How findings about paths name an end, a member and a prediction. */
import type { RadioPath } from '../consequences/paths.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import type { Plan } from '../plan/model.ts';
import { formatDistance } from '../radio/format-quantity.ts';

export function endText(plan: Plan, end: PathEnd): string {
  if (end.kind === 'member') return plan.places.get(end.place)?.name ?? end.place;
  const stations =
    end.kind === 'repeater' ? plan.repeaters : end.kind === 'mailbox' ? plan.mailboxes : plan.digipeaters;
  return stations.get(end.id)?.name ?? end.id;
}

/** `over 12.7 km the margin is -12 dB, give or take 9`; empty where there was no ground to reckon with. */
export function figuresText({ prediction }: RadioPath): string {
  if (!prediction.ok) return '';
  const { marginDb, spreadDb } = prediction.worse;
  return `over ${formatDistance(prediction.distanceM)} the margin is ${Math.round(marginDb)} dB, give or take ${Math.round(spreadDb)}`;
}

/** `(-6 dB)` */
export function marginText({ prediction }: RadioPath): string {
  return prediction.ok ? `(${Math.round(prediction.worse.marginDb)} dB)` : '';
}
