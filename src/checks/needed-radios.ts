/** What a radio lacks on the channels that its holders need: one entry a radio, channel and kind of lack. */
import type { ChannelParticulars } from '../consequences/channel-particulars.ts';
import type { MisfitCode } from '../consequences/radio-fit.ts';
import type { Radio } from '../plan/model.ts';
import { groupBy } from './group-by.ts';
import { shortfalls } from './needs.ts';
import type { RuleContext } from './rule.ts';

export interface Lack {
  readonly radio: Radio;
  readonly on: ChannelParticulars;
  /** A clause after the radio's name. */
  readonly text: string;
  readonly members: readonly string[];
  /** The check-in or ladder that needs it. */
  readonly because: string;
}

export function lacks(context: RuleContext, code: MisfitCode): readonly Lack[] {
  const short = shortfalls(context).filter(({ cause }) => cause.code === code);
  return [...groupBy(short, ({ radio, on }) => `${radio.id} ${on.slot}`).values()].map((here) => {
    const [{ radio, on, cause, need }] = here;
    return {
      radio,
      on,
      text: cause.text,
      members: here.map(({ member }) => member.name),
      because: need.because,
    };
  });
}
