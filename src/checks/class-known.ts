import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { Member } from '../plan/model.ts';
import { type Law, serviceById } from '../regulations/law.ts';

/** Whether a member's class for a channel is one that its service has; a class misspelt is found as that, and as nothing else. */
export function classKnown(law: Law, member: Member, on: ChannelParticulars): boolean {
  return on.services.every((id) => {
    const held = member.licences.get(id)?.class;
    const classes = serviceById(law, id)?.classes ?? [];
    return held === undefined || classes.length === 0 || classes.some((row) => row.id === held);
  });
}
