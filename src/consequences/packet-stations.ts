/** Every packet station with where it is written: mailboxes first, each in the order of the plan. */
import type { PlanPath } from '../findings/finding.ts';
import type { PacketStation, Plan } from '../plan/model.ts';

export interface WrittenStation {
  readonly path: PlanPath;
  readonly station: PacketStation;
}

export function packetStations(plan: Plan): readonly WrittenStation[] {
  const of = (section: string, stations: ReadonlyMap<string, PacketStation>) =>
    [...stations.values()].map((station) => ({ path: ['packet', section, station.id], station }));
  return [...of('mailboxes', plan.mailboxes), ...of('digipeaters', plan.digipeaters)];
}
