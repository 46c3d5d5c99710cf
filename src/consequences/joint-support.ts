/** What every radio rung of a ladder needs: a station, the place where their stations stand, or something that feeds them. */

import type { Ladder, Plan, Rung } from '../plan/model.ts';
import { type Dependent, supportsOf } from './supports.ts';

/**
 * Names of what all radio rungs hang on, the nearest first: the same station goes before the place it stands
 * at, and that before what feeds it. Empty where one rung is free of it, as simplex is.
 */
export function jointSupport(
  plan: Plan,
  all: ReadonlyMap<string, Dependent>,
  ladder: Ladder,
): readonly string[] {
  const radioRungs = ladder.rungs.filter(({ channel }) => channel !== undefined);
  const stations = radioRungs.map((rung) => stationsOf(plan, rung));
  const nearestFirst: readonly (readonly (readonly string[])[])[] = [
    stations,
    stations.map((ids) => ids.flatMap((id) => placeOf(plan, id) ?? [])),
    radioRungs.map((rung, index) => [...supportsOf(all, [...(stations[index] ?? []), ...rung.dependsOn])]),
  ];
  for (const needs of nearestFirst) {
    const [first = [], ...others] = needs;
    const shared = first.filter((id) => others.every((ids) => ids.includes(id)));
    if (shared.length > 0) return shared.map((id) => all.get(id)?.name ?? plan.places.get(id)?.name ?? id);
  }
  return [];
}

function stationsOf(plan: Plan, { channel, mailbox, through }: Rung): readonly string[] {
  const on = channel === undefined ? undefined : plan.channels.get(channel);
  return [
    ...(on?.kind === 'repeater' && plan.repeaters.has(on.repeater) ? [on.repeater] : []),
    ...through.filter((id) => plan.digipeaters.has(id)),
    ...(mailbox !== undefined && plan.mailboxes.has(mailbox) ? [mailbox] : []),
  ];
}

function placeOf(plan: Plan, id: string): string | undefined {
  return (plan.repeaters.get(id) ?? plan.digipeaters.get(id) ?? plan.mailboxes.get(id))?.place;
}
