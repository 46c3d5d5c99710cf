/** Where planned signals go out: a repeater or packet station at its place, a member's channel at each member's usual place. */

import type { PlanPath } from '../findings/finding.ts';
import type { Place } from '../plan/model.ts';
import { memberKinds } from './member-kinds.ts';
import type { PlanInLaw } from './plan-in-law.ts';
import type { PlannedSignal } from './planned-signals.ts';
import { plannedSignals } from './planned-signals.ts';

export interface Standing {
  readonly signal: PlannedSignal;
  readonly place: Place;
  /** Where the place of the station is written. */
  readonly at: PlanPath;
}

/** Stations with a place of their own; what members send is asked in the table of who may use what. */
export function* standings(context: PlanInLaw): Generator<Standing> {
  for (const signal of plannedSignals(context)) {
    const [station, section] =
      signal.part === 'output'
        ? ([signal.repeater, ['repeaters']] as const)
        : signal.part === 'packet station'
          ? ([signal.station, ['packet', signal.digipeater ? 'digipeaters' : 'mailboxes']] as const)
          : [undefined, []];
    const place = station?.place === undefined ? undefined : context.plan.places.get(station.place);
    if (station && place) yield { signal, place, at: [...section, station.id, 'place'] };
  }
}

/** Members who may transmit on a slot, by their usual place; one name a kind of member is enough to ask the table. */
export function* membersStanding(
  { plan, law, consequences }: PlanInLaw,
  slot: number,
): Generator<{ readonly place: Place; readonly names: readonly string[] }> {
  for (const kind of memberKinds({ plan, law })) {
    const [{ id, at }] = kind;
    const place = at === undefined ? undefined : plan.places.get(at);
    if (place && consequences.best(id, slot)?.may === 'transmit')
      yield { place, names: kind.map(({ name }) => name) };
  }
}
