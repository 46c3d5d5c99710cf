/** How many members may transmit on a channel, how many hold it at all, and who the only one is. */
import type { Member } from '../plan/model.ts';
import { memberKinds } from './member-kinds.ts';
import type { RuleContext } from './rule.ts';

export interface ChannelUsers {
  readonly transmitting: number;
  /** Transmitting or listening. */
  readonly holding: number;
  /** Where one member alone may transmit. */
  readonly onlyOne?: Member;
}

export function channelUsers(
  { plan, consequences }: Pick<RuleContext, 'plan' | 'consequences'>,
  slot: number,
): ChannelUsers {
  let transmitting = 0;
  let holding = 0;
  let first: Member | undefined;
  for (const kind of memberKinds(plan)) {
    const may = consequences.best(kind[0].id, slot)?.may ?? 'not held';
    if (may !== 'not held') holding += kind.length;
    if (may === 'transmit') {
      transmitting += kind.length;
      first ??= kind[0];
    }
  }
  return { transmitting, holding, ...(transmitting === 1 && first && { onlyOne: first }) };
}
