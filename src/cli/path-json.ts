/** A predicted path as JSON: metres, decibels, degrees, whole hertz. */
import type { RadioPath } from '../consequences/paths.ts';
import type { PathEnd } from '../consequences/wanted-paths.ts';
import type { LinkBudget } from '../reach/link-budget.ts';

export function pathJson({ from, to, slot, members, prediction, trials }: RadioPath): object {
  const head = { from: endJson(from), to: endJson(to), slot, members };
  const heard = trials.map(({ date, heard: what, report }) => ({
    date,
    heard: what,
    ...(report !== undefined && { report }),
  }));
  const bearings = {
    distanceM: round(prediction.distanceM, 0),
    bearingDeg: round(prediction.bearingDeg, 1),
    returnBearingDeg: round(prediction.returnBearingDeg, 1),
    ...(prediction.magneticBearingDeg !== undefined && {
      magneticBearingDeg: round(prediction.magneticBearingDeg, 1),
    }),
  };
  if (!prediction.ok) return { ...head, ...bearings, noData: prediction.reason, trials: heard };
  const { worse, there, back, obstacle } = prediction;
  return {
    ...head,
    ...bearings,
    verdict: worse.verdict,
    probability: round(worse.probability, 3),
    marginDb: round(worse.marginDb, 1),
    spreadDb: round(worse.spreadDb, 1),
    ...(there && { there: budgetJson(there) }),
    ...(back && { back: budgetJson(back) }),
    ...(obstacle && {
      obstacle: {
        latitudeDeg: round(obstacle.position.latitudeDeg, 5),
        longitudeDeg: round(obstacle.position.longitudeDeg, 5),
        alongM: round(obstacle.alongKm * 1000, 0),
        groundM: round(obstacle.groundM, 0),
        aboveLineM: round(obstacle.aboveLineM, 1),
        firstFresnelZoneM: round(obstacle.fresnelZoneM, 1),
      },
    }),
    trials: heard,
  };
}

function budgetJson(budget: LinkBudget): object {
  return {
    lossDb: round(budget.lossDb, 1),
    signalDbm: round(budget.signalDbm, 1),
    thresholdDbm: round(budget.threshold.thresholdDbm, 1),
    marginDb: round(budget.marginDb, 1),
    parts: budget.parts.map(({ what, db, fromMemory }) => ({
      what,
      db: round(db, 1),
      ...(fromMemory && { fromMemory }),
    })),
  };
}

function endJson(end: PathEnd): object {
  return end.kind === 'member'
    ? { place: end.place, radio: end.radio }
    : { [end.kind]: end.id, place: end.place };
}

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
