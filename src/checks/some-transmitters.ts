/** The first few members who may transmit on a channel: enough to tell nobody, one and several apart without asking all. */

import { memberKinds } from '../consequences/member-kinds.ts';
import type { Member } from '../plan/model.ts';
import type { RuleContext } from './rule.ts';

export function someTransmitters(
  { plan, law, consequences }: Pick<RuleContext, 'plan' | 'law' | 'consequences'>,
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
