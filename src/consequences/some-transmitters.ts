/** The first few members who may transmit on a channel: enough to tell nobody, one and several apart without asking all. */

import type { Member } from '../plan/model.ts';
import { memberKinds } from './member-kinds.ts';
import type { PlanInLaw } from './plan-in-law.ts';

export function someTransmitters(
  { plan, law, consequences }: PlanInLaw,
  slot: number,
  most: number,
): readonly Member[] {
  const found: Member[] = [];
  for (const kind of memberKinds({ plan, law })) {
    if (consequences.best(kind[0].id, slot)?.may === 'transmit')
      found.push(...kind.slice(0, most - found.length));
    if (found.length >= most) break;
  }
  return found;
}
