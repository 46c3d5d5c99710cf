/** What radios lack on a channel that their holders need: one entry a channel and kind of lack. */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { MisfitCode } from '../consequences/radio-fit.ts';
import { groupBy } from './group-by.ts';
import { listNames } from './list-names.ts';
import { shortfalls } from './needs.ts';
import type { RuleContext } from './rule.ts';

export interface Lack {
  readonly on: ChannelParticulars;
  /** Which radio lacks what, who needs the channel and for what: a sentence without its stop. */
  readonly text: string;
}

export function lacks(context: RuleContext, code: MisfitCode): readonly Lack[] {
  const short = shortfalls(context).filter(({ cause }) => cause.code === code);
  return [...groupBy(short, ({ on }) => on.slot).values()].map((here) => {
    const [{ on, need, cause, radio: first }] = here;
    const who = [...groupBy(here, ({ radio }) => radio.id).values()].map((each) => {
      const [{ radio }] = each;
      return `${listNames(each.map(({ member }) => member.name))} (${radio.name})`;
    });
    return {
      on,
      text: `${first.name} ${cause.text}; slot ${on.slot}, ${on.name}, is needed for ${need.because} by ${who.join(' and ')}`,
    };
  });
}
